#pragma once
// The roster on the screen: names stay at the left and machines on top, whatever is scrolled.
#include <QAbstractTableModel>
#include <QTableView>

#include "app/rosters/roster_table.h"

namespace wm::app {

class RosterModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  void set_table(RosterTable table);
  const RosterTable& table() const { return table_; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  /// In words, for whoever reads by ear or points at it; the picture is the grid's.
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  RosterTable table_;
};

class RosterGrid : public QTableView {
  Q_OBJECT
 public:
  explicit RosterGrid(QWidget* parent = nullptr);
  void show_table(RosterTable table);
  const RosterTable& table() const { return model_->table(); }

 signals:
  void opened(const wm::PersonId& person, const wm::TargetName& target);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void open_current();
  void set_widths();

  RosterModel* model_;
  int needed_width_ = 0;
};

}  // namespace wm::app
