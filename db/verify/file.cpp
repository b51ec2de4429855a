#include "db/verify/file.h"

#include "core/ledger/tree.h"
#include "db/sql/dialect.h"

namespace wm::verify {

bool Rows::next() {
  // A step beyond the last row would begin with the first again.
  if (failed_ || ended_) return false;
  const int step = sqlite3_step(statement_.get());
  failed_ = step != SQLITE_ROW && step != SQLITE_DONE;
  ended_ = step != SQLITE_ROW;
  return !ended_;
}

std::string_view Rows::bytes(int column) const {
  // As text first, which SQLite turns into UTF-8 whatever the file is in.
  const void* data = is_text(column) ? sqlite3_column_text(statement_.get(), column)
                                     : sqlite3_column_blob(statement_.get(), column);
  const int size = sqlite3_column_bytes(statement_.get(), column);
  return data == nullptr ? std::string_view() : std::string_view(static_cast<const char*>(data), size);
}

std::string Rows::shown(int column) const {
  if (is_null(column)) return "nothing";
  if (is_blob(column)) return ledger::to_hex(bytes(column));
  return std::string(reinterpret_cast<const char*>(sqlite3_column_text(statement_.get(), column)));
}

Expected<File> File::open(const std::string& path) {
  const auto refuse = [&](std::string what, const char* remedy) {
    return tl::make_unexpected(Problem{path, std::move(what), remedy});
  };
  sqlite3* opened = nullptr;
  const int done =
      sqlite3_open_v2(path.c_str(), &opened, SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX, nullptr);
  File file;
  file.path_ = path;
  file.database_ = {opened, sqlite3_close_v2};
  if (done != SQLITE_OK)
    return refuse("The file cannot be opened: " + file.said() + ".",
                  "Check its name, and the right to read it.");
  sqlite3_busy_timeout(opened, 5000);
  Rows id = file.rows(db::dialect::read_application_id);
  if (!id.next())
    return refuse("The file cannot be read: " + file.said() + ".",
                  "Choose the shop's own file, or a backup of it.");
  if (id.whole(0) != db::dialect::application_id)
    return refuse("The file is not a shop's file of this program.",
                  "Choose the shop's own file, or a backup of it.");
  // Only the first look begins the moment.
  if (!file.run("PRAGMA trusted_schema = OFF; BEGIN; SELECT count(*) FROM sqlite_master"))
    return refuse("The file cannot be read: " + file.said() + ".", "Try again.");
  return file;
}

File File::in_memory() {
  File file;
  sqlite3* opened = nullptr;
  sqlite3_open_v2(":memory:", &opened, SQLITE_OPEN_READWRITE, nullptr);
  file.database_ = {opened, sqlite3_close_v2};
  return file;
}

Rows File::rows(const char* sql) const {
  Rows rows;
  rows.database_ = database_;
  sqlite3_stmt* prepared = nullptr;
  rows.failed_ = sqlite3_prepare_v2(database_.get(), sql, -1, &prepared, nullptr) != SQLITE_OK;
  rows.statement_.reset(prepared);
  return rows;
}

Rows File::rows(const char* sql, const std::string& text) const {
  Rows found = rows(sql);
  if (!found.failed_)
    sqlite3_bind_text(found.statement_.get(), 1, text.data(), static_cast<int>(text.size()),
                      SQLITE_TRANSIENT);
  return found;
}

Rows File::rows(const char* sql, std::initializer_list<std::int64_t> numbers) const {
  Rows found = rows(sql);
  int at = 0;
  if (!found.failed_)
    for (const std::int64_t number : numbers) sqlite3_bind_int64(found.statement_.get(), ++at, number);
  return found;
}

std::string File::said() const {
  std::string said = sqlite3_errmsg(database_.get());
  for (char& c : said)
    if (static_cast<unsigned char>(c) >= 0x80) c = '?';
  return said;
}

bool File::run(const std::string& sql) const {
  return sqlite3_exec(database_.get(), sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK;
}

}  // namespace wm::verify
