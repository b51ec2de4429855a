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

bool same_rows(const File& one, const File& other, const char* sql) {
  Rows a = one.rows(sql), b = other.rows(sql);
  for (;;) {
    const bool more = a.next();
    if (more != b.next()) return false;
    if (!more) return !a.failed() && !b.failed();
    if (a.columns() != b.columns()) return false;
    for (int i = 0; i < a.columns(); ++i)
      if (!same_cell(a, b, i)) return false;
  }
}

std::string in_marks(std::string_view name, char mark) {
  std::string out(1, mark);
  for (const char c : name) out.append(c == mark ? 2 : 1, c);
  return out + mark;
}

std::vector<std::string> tables_of(const File& file) {
  std::vector<std::string> tables;
  for (Rows rows = file.rows(dialect::read_schema); rows.next();)
    if (rows.bytes(0) == "table") tables.emplace_back(rows.bytes(1));
  return tables;
}

/// How many rows of a table the file has, or SQLite's statement finds; -1 where it can't be read.
std::int64_t counted(const File& file, const std::string& sql) {
  Rows rows = file.rows(sql.c_str());
  return rows.next() ? rows.whole(0) : -1;
}

/// Those of both whose key and every other column are the same.
std::string in_both(const File& file, const std::string& table) {
  std::string key, columns;
  for (Rows rows =
           file.rows(("SELECT name, pk FROM pragma_table_info(" + in_marks(table, '\'') + ")").c_str());
       rows.next();) {
    const std::string column = in_marks(rows.bytes(0), '"'), a = "a." + column, b = "b." + column;
    // IS tells a text from a blob or a number by itself, but not 1 from 1.0, which the columns' types never
    // are.
    (rows.whole(1) > 0 ? key : columns) += " AND " + a + " IS " + b;
  }
  if (key.empty()) key = " AND a.rowid = b.rowid";
  return "SELECT count(*) FROM main." + in_marks(table, '"') + " a CROSS JOIN other." + in_marks(table, '"') +
         " b WHERE 1" + key + columns;
}

bool same_table(const File& file, const std::string& table) {
  const std::string all = "SELECT count(*) FROM ";
  const std::int64_t rows = counted(file, all + "main." + in_marks(table, '"'));
  return rows >= 0 && rows == counted(file, all + "other." + in_marks(table, '"')) &&
         rows == counted(file, in_both(file, table));
}

}  // namespace

bool same_content(const File& file, const std::string& other) {
  const auto beside = File::open(other);
  if (!beside) return false;
  for (const char* sql : {dialect::read_schema, dialect::read_application_id, dialect::read_version})
    if (!same_rows(file, *beside, sql)) return false;
  if (!file.run("ATTACH " + in_marks(other, '\'') + " AS other")) return false;
  for (const std::string& table : tables_of(file))
    if (!same_table(file, table)) return false;
  return true;
}

}  // namespace wm::db
