#pragma once
// A run sheet as it comes out of the printer, its pages one below the other.
#include <QWidget>
#include <optional>

#include "app/checkouts/blank_sheet.h"

namespace wm::app {

class SheetPages : public QWidget {
  Q_OBJECT
 public:
  explicit SheetPages(QWidget* parent = nullptr);
  void show_sheet(Session& session, const Sheet& sheet);
  /// An empty place.
  void show_none();

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  /// Of one page with its margins, in paper units.
  QSizeF page() const;

  std::optional<BlankSheet> blank_;
};

}  // namespace wm::app
