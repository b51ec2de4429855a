#include "db/backup/same_content.h"

#include <vector>

#include "db/sql/dialect.h"

namespace wm::db {
namespace {

using verify::File;
using verify::Rows;

bool same_cell(const Rows& a, const Rows& b, int column) {
  if (a.is_null(column) || b.is_null(column)) return a.is_null(column) == b.is_null(column);
  if (a.is_whole(column) != b.is_whole(column) || a.is_text(column) != b.is_text(column)) return false;
  return a.is_whole(column) ? a.whole(column) == b.whole(column) : a.bytes(column) == b.bytes(column);
}

bool same_rows(const File& one, const File& other, const std::string& sql) {
  Rows a = one.rows(sql.c_str()), b = other.rows(sql.c_str());
  for (;;) {
    const bool more = a.next();
    if (more != b.next()) return false;
    if (!more) return !a.failed() && !b.failed();
    if (a.columns() != b.columns()) return false;
    for (int i = 0; i < a.columns(); ++i)
      if (!same_cell(a, b, i)) return false;
  }
}

std::vector<std::string> tables_of(const File& file) {
  std::vector<std::string> tables;
  for (Rows rows = file.rows(dialect::read_schema); rows.next();)
    if (rows.bytes(0) == "table") tables.emplace_back(rows.bytes(1));
  return tables;
}

}  // namespace

bool same_content(const File& a, const File& b) {
  for (const char* sql : {dialect::read_schema, dialect::read_application_id, dialect::read_version})
    if (!same_rows(a, b, sql)) return false;
  for (const std::string& table : tables_of(a))
    // Each table's first column, or the first two, are its key.
    if (!same_rows(a, b, "SELECT * FROM " + table + " ORDER BY 1, 2")) return false;
  return true;
}

}  // namespace wm::db
