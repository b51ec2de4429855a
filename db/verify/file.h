#pragma once
// The store's file, read by SQLite alone: no other part of the program stands between it and what is
// verified.
#include <sqlite3.h>

#include <cstdint>
#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/problem.h"

namespace wm::verify {

/// What is read of a row. Text is valid until the next one.
class Rows {
 public:
  bool next();
  bool is_null(int column) const { return type(column) == SQLITE_NULL; }
  bool is_text(int column) const { return type(column) == SQLITE_TEXT; }
  bool is_whole(int column) const { return type(column) == SQLITE_INTEGER; }
  bool is_blob(int column) const { return type(column) == SQLITE_BLOB; }
  int columns() const { return sqlite3_column_count(statement_.get()); }
  std::int64_t whole(int column) const { return sqlite3_column_int64(statement_.get(), column); }
  std::string_view bytes(int column) const;
  /// As a person would write it: text as it is, a blob in hexadecimal, "nothing" where there is nothing.
  std::string shown(int column) const;

  /// Whether reading stopped before the last row, or the table could not be read at all.
  bool failed() const { return failed_; }

 private:
  friend class File;
  int type(int column) const { return sqlite3_column_type(statement_.get(), column); }
  std::shared_ptr<sqlite3> database_;
  std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> statement_{nullptr, sqlite3_finalize};
  bool failed_ = false, ended_ = false;
};

class File {
 public:
  /// Opens a file to read it, and begins to read one moment of it.
  static Expected<File> open(const std::string& path);
  /// An empty one in memory.
  static File in_memory();
  Rows rows(const char* sql) const;
  /// With a text for ?1.
  Rows rows(const char* sql, const std::string& text) const;
  /// With whole numbers for ?1, ?2 …
  Rows rows(const char* sql, std::initializer_list<std::int64_t> numbers) const;
  /// Another reader of the same file, for another thread. Its moment may be a later one.
  Expected<File> again() const { return open(path_); }
  /// Whether all of it ran.
  bool run(const std::string& sql) const;
  /// What SQLite said last, in ASCII: it may quote bytes of a damaged file.
  std::string said() const;

 private:
  std::string path_;
  std::shared_ptr<sqlite3> database_;
};

}  // namespace wm::verify
