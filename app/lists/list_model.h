#pragma once
// The rows of a plain list: text, a quiet second line, and whether the row is struck out.
#include <QAbstractTableModel>
#include <vector>

namespace wm::app {

struct ListColumn {
  QString title;
  int width = 120;  // device-independent pixels; 0: what is left
};

struct ListCell {
  QString text;
  QString quiet;  // a second line, or nothing
  bool heavy = false;
};

struct ListRow {
  QString id;
  std::vector<ListCell> cells;
  bool struck = false;  // drawn with a line through it
};

class ListModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  void set_columns(std::vector<ListColumn> columns);
  void set_rows(std::vector<ListRow> rows);
  const std::vector<ListRow>& rows() const { return rows_; }
  const std::vector<ListColumn>& columns() const { return columns_; }
  int place_of(const QString& id) const;  // -1: not in the list

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  std::vector<ListColumn> columns_;
  std::vector<ListRow> rows_;
};

}  // namespace wm::app
