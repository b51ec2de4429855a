#pragma once
// Rows of a table, kept, so that one thread can read on while others look at them.
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "db/verify/file.h"

namespace wm::verify {

class RowsKept;

/// One of them; it answers as Rows does. Good as long as its RowsKept is.
class KeptRow {
 public:
  bool is_null(int column) const { return type(column) == SQLITE_NULL; }
  bool is_text(int column) const { return type(column) == SQLITE_TEXT; }
  bool is_whole(int column) const { return type(column) == SQLITE_INTEGER; }
  bool is_blob(int column) const { return type(column) == SQLITE_BLOB; }
  std::int64_t whole(int column) const;
  std::string_view bytes(int column) const;
  std::string shown(int column) const;

 private:
  friend class RowsKept;
  KeptRow(const RowsKept& rows, std::size_t first) : rows_(&rows), first_(first) {}
  int type(int column) const;
  const RowsKept* rows_;
  std::size_t first_;
};

class RowsKept {
 public:
  /// The next ones, some megabytes of them; none where there are no more.
  explicit RowsKept(Rows& rows);
  std::size_t size() const { return columns_ == 0 ? 0 : cells_.size() / columns_; }
  KeptRow operator[](std::size_t row) const { return {*this, row * columns_}; }

 private:
  friend class KeptRow;
  struct Cell {
    int type;
    std::int64_t whole;
    std::size_t from, length;
  };
  void keep(const Rows& rows, int column);
  std::size_t columns_ = 0;
  std::vector<Cell> cells_;
  std::vector<char> bytes_;
};

}  // namespace wm::verify
