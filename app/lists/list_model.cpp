#include "app/lists/list_model.h"

#include <algorithm>

namespace wm::app {

void ListModel::set_columns(std::vector<ListColumn> columns) {
  beginResetModel();
  columns_ = std::move(columns);
  endResetModel();
}

void ListModel::set_rows(std::vector<ListRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

int ListModel::place_of(const QString& id) const {
  const auto found = std::ranges::find(rows_, id, &ListRow::id);
  return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

int ListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ListModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant ListModel::data(const QModelIndex& index, int role) const {
  const ListRow& row = rows_[static_cast<std::size_t>(index.row())];
  if (static_cast<std::size_t>(index.column()) >= row.cells.size()) return {};
  const ListCell& cell = row.cells[static_cast<std::size_t>(index.column())];
  if (role == Qt::DisplayRole) return cell.text;
  // Read aloud and shown when pointed at: the whole cell, however much of it is drawn.
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
    return cell.quiet.isEmpty() ? cell.text : cell.text + "\n" + cell.quiet;
  return {};
}

QVariant ListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  return columns_[static_cast<std::size_t>(section)].title;
}

}  // namespace wm::app
