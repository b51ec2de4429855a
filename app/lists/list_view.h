#pragma once
// A plain list by keyboard: arrows choose, Enter opens, and a search field above it passes its arrows down.
#include <QLineEdit>
#include <QTableView>
#include <optional>

#include "app/lists/list_model.h"

namespace wm::app {

class ListView : public QTableView {
  Q_OBJECT
 public:
  explicit ListView(std::vector<ListColumn> columns, QWidget* parent = nullptr);

  /// New rows; the row that was chosen stays so where it still is, else the first one is.
  void set_rows(std::vector<ListRow> rows);
  const std::vector<ListRow>& rows() const { return model_->rows(); }
  /// Chooses a row by its id and scrolls to it; false where it is not in the list.
  bool choose(const QString& id);
  QString chosen() const;  // empty: none
  /// Up, Down, Page Up and Page Down typed into `field` move the choice here.
  void led_by(QLineEdit* field);

 signals:
  void choice_changed(const QString& id);
  void opened(const QString& id);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  ListModel* model_;
  bool filling_ = false;
};

}  // namespace wm::app
