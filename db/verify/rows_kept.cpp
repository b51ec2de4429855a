#include "db/verify/rows_kept.h"

#include "core/ledger/tree.h"

namespace wm::verify {
namespace {

constexpr std::size_t enough = std::size_t{2} << 20;  // bytes

}  // namespace

RowsKept::RowsKept(Rows& rows) : columns_(static_cast<std::size_t>(rows.columns())) {
  bytes_.reserve(enough + enough / 16);
  while (bytes_.size() < enough && rows.next())
    for (int column = 0; column < static_cast<int>(columns_); ++column) keep(rows, column);
}

void RowsKept::keep(const Rows& rows, int column) {
  Cell cell{rows.type(column), 0, bytes_.size(), 0};
  if (cell.type == SQLITE_INTEGER) {
    cell.whole = rows.whole(column);
  } else if (cell.type != SQLITE_NULL) {
    const std::string_view bytes = rows.bytes(column);
    bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
    cell.length = bytes.size();
  }
  cells_.push_back(cell);
}

int KeptRow::type(int column) const { return rows_->cells_[first_ + static_cast<std::size_t>(column)].type; }

std::int64_t KeptRow::whole(int column) const {
  return rows_->cells_[first_ + static_cast<std::size_t>(column)].whole;
}

std::string_view KeptRow::bytes(int column) const {
  const auto& cell = rows_->cells_[first_ + static_cast<std::size_t>(column)];
  return {rows_->bytes_.data() + cell.from, cell.length};
}

std::string KeptRow::shown(int column) const {
  if (is_null(column)) return "nothing";
  if (is_whole(column)) return std::to_string(whole(column));
  return is_blob(column) ? ledger::to_hex(bytes(column)) : std::string(bytes(column));
}

}  // namespace wm::verify
