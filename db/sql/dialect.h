#pragma once
// All that is SQLite's own and not shared with other engines, beside the migrations called *.sqlite.sql.
#include <array>

namespace wm::db::dialect {

/// "Wmk1": at byte 68 of the file, so that another program's database is not taken for ours.
inline constexpr int application_id = 0x576D6B31;

inline constexpr const char* driver = "QSQLITE";
inline constexpr const char* begin = "BEGIN IMMEDIATE";
inline constexpr const char* read_application_id = "PRAGMA application_id";
inline constexpr const char* read_version = "PRAGMA user_version";
inline constexpr const char* set_application_id = "PRAGMA application_id = ";
inline constexpr const char* set_version = "PRAGMA user_version = ";
/// Nothing in it at all, not even an unused table.
inline constexpr const char* read_blank =
    "SELECT (SELECT count(*) FROM sqlite_master) = 0 AND (SELECT user_version FROM pragma_user_version) = 0 "
    "AND (SELECT application_id FROM pragma_application_id) = 0";
/// All that is defined, tables in an order that does not depend on when they were made.
inline constexpr const char* read_schema =
    "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY type, name";
/// Every page and every index.
inline constexpr const char* whole_check = "PRAGMA integrity_check(1)";
/// Copies all that is there into a new file, of one moment, without what was deleted.
inline constexpr const char* copy_into = "VACUUM INTO ?";
/// Puts the log into the file and does without it; only where nobody else has the file open.
inline constexpr const char* leave_log = "PRAGMA journal_mode = DELETE";
inline constexpr const char* begin_alone = "BEGIN EXCLUSIVE";
inline constexpr const char* quick_check = "PRAGMA quick_check(1)";
inline constexpr const char* others_commits = "PRAGMA data_version";
/// Moves the log into the file and empties it, so that a blanked value is in neither.
inline constexpr const char* empty_log = "PRAGMA wal_checkpoint(TRUNCATE)";

/// What every connection asks for: a commit is on the disk when it returns, names are checked, functions
/// inside somebody else's schema are not trusted, and what is blanked is overwritten.
inline constexpr std::array settings = {
    "PRAGMA journal_mode = WAL",   "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON",
    "PRAGMA trusted_schema = OFF", "PRAGMA secure_delete = ON",
};

/// SQLite's result codes, as QSqlError::nativeErrorCode has them (the low byte is the kind;
/// sqlite.org/rescode.html).
enum Code {
  busy = 5,
  locked = 6,
  readonly = 8,
  io_error = 10,
  corrupt = 11,
  full = 13,
  cannot_open = 14,
  not_a_database = 26,
  io_error_read = io_error | 1 << 8,
  io_error_short_read = io_error | 2 << 8
};

}  // namespace wm::db::dialect
