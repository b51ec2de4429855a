#include "app/rosters/roster_grid.h"
#include "app/words/words.h"

namespace wm::app {

void RosterModel::set_table(RosterTable table) {
  beginResetModel();
  table_ = std::move(table);
  endResetModel();
}

int RosterModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(table_.rows.size());
}

int RosterModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(table_.columns.size());
}

QVariant RosterModel::data(const QModelIndex& index, int role) const {
  const RosterRow& row = table_.rows[static_cast<std::size_t>(index.row())];
  const RosterCell& cell = row.cells[static_cast<std::size_t>(index.column())];
  const QString detail = cell_detail(cell, table_.zone, table_.at);
  QStringList said{cell_words(cell), detail, restricted_words(cell.restricted)};
  said.removeAll(QString());
  const QString words = said.join(", ");
  if (role == Qt::DisplayRole) return words;
  if (role != Qt::ToolTipRole && role != Qt::AccessibleTextRole) return {};
  const RosterColumn& column = table_.columns[static_cast<std::size_t>(index.column())];
  return row.name + "\n" + target_label(column.target) + "\n" + words;
}

QVariant RosterModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole) return {};
  if (orientation == Qt::Vertical) return table_.rows[static_cast<std::size_t>(section)].name;
  return target_label(table_.columns[static_cast<std::size_t>(section)].target);
}

}  // namespace wm::app
