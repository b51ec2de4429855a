#pragma once
// One line of the list of pages: its title, and its key in quiet type.
#include <QAbstractButton>

namespace wm::app {

class PageLink : public QAbstractButton {
  Q_OBJECT
 public:
  PageLink(const QString& title, const QKeySequence& key, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {132, 32}; }

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wm::app
