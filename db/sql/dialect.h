#pragma once
// All in which the two engines differ, beside the migrations called *.sqlite.sql and *.postgres.sql.
#include <array>
#include <span>

namespace wm::db {

enum class Engine { sqlite, postgres };

namespace dialect {

/// "Wmk1": at byte 68 of a file, so that another program's database is not taken for ours.
inline constexpr int application_id = 0x576D6B31;

// SQLite's own, for what is of files alone: backups, and looking a file through.
inline constexpr const char* read_application_id = "PRAGMA application_id";
inline constexpr const char* read_version = "PRAGMA user_version";
/// All that is defined, tables in an order that does not depend on when they were made.
inline constexpr const char* read_schema =
    "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY type, name";
/// Every page and every index.
inline constexpr const char* whole_check = "PRAGMA integrity_check(1)";
inline constexpr const char* quick_check = "PRAGMA quick_check(1)";
/// Copies all that is there into a new file, of one moment, without what was deleted.
inline constexpr const char* copy_into = "VACUUM INTO ?";
/// Puts the log into the file and does without it; only where nobody else has the file open.
inline constexpr const char* leave_log = "PRAGMA journal_mode = DELETE";
inline constexpr const char* begin_alone = "BEGIN EXCLUSIVE";
inline constexpr const char* others_commits = "PRAGMA data_version";

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

}  // namespace dialect

/// What each engine is told, and in which words. Empty: it has no such thing.
struct Dialect {
  Engine engine;
  const char* driver;
  /// What every connection asks for.
  std::span<const char* const> settings;
  /// Begins to write, and the second waits until nobody else does; begins to read one state of it all.
  const char *begin, *take_turn, *begin_reading;
  const char *read_application_id, *read_version, *read_blank;
  /// With the number in place of %1.
  const char *set_application_id, *set_version;
  /// Another value whenever another program has committed since it was asked last.
  const char* others_commits;
  /// Leaves nothing of a value that was blanked.
  const char* after_blanking;
  /// The server's clock, in milliseconds since 1970.
  const char* clock;
  /// Whom the server has let in.
  const char* login;
  /// How the migrations end that are not for this engine.
  const char* not_ours;
};

namespace dialect {

/// A commit is on the disk when it returns, names are checked, functions inside somebody else's schema are
/// not trusted, and what is blanked is overwritten.
inline constexpr std::array sqlite_settings = {
    "PRAGMA journal_mode = WAL",   "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON",
    "PRAGMA trusted_schema = OFF", "PRAGMA secure_delete = ON",
};

/// A commit is on the server's disk when it returns, and a desk that froze while it was entering something
/// keeps nobody waiting for long.
inline constexpr std::array postgres_settings = {
    "SET synchronous_commit = on",
    "SET idle_in_transaction_session_timeout = '20s'",
    "SET client_min_messages = warning",
    "SET TIME ZONE 'UTC'",
};

inline constexpr Dialect sqlite = {
    .engine = Engine::sqlite,
    .driver = "QSQLITE",
    .settings = sqlite_settings,
    .begin = "BEGIN IMMEDIATE",
    .take_turn = "",
    .begin_reading = "BEGIN",
    .read_application_id = read_application_id,
    .read_version = read_version,
    // Nothing in it at all, not even an unused table.
    .read_blank =
        "SELECT (SELECT count(*) FROM sqlite_master) = 0 AND (SELECT user_version FROM pragma_user_version) "
        "= 0 AND (SELECT application_id FROM pragma_application_id) = 0",
    .set_application_id = "PRAGMA application_id = %1",
    .set_version = "PRAGMA user_version = %1",
    .others_commits = others_commits,
    // Moves the log into the file and empties it, so that a blanked value is in neither.
    .after_blanking = "PRAGMA wal_checkpoint(TRUNCATE)",
    .clock = "",
    .login = "",
    .not_ours = ".postgres.sql",
};

inline constexpr Dialect postgres = {
    .engine = Engine::postgres,
    .driver = "QPSQL",
    .settings = postgres_settings,
    .begin = "BEGIN ISOLATION LEVEL SERIALIZABLE",
    // Taken before anything is read, so that what is read is what the desk before this one left
    // (postgresql.org/docs/15/sql-lock.html).
    .take_turn = "LOCK TABLE tree_edge IN EXCLUSIVE MODE",
    // Whoever reads keeps nobody waiting, and a large shop takes long to be made sense of.
    .begin_reading =
        "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY; "
        "SET LOCAL idle_in_transaction_session_timeout = 0",
    // The table's name is the program's own: another program's database has none such.
    .read_application_id =
        "SELECT CASE WHEN to_regclass('witnessmark_store') IS NULL THEN 0 ELSE 1466788657 END",
    .read_version = "SELECT version FROM witnessmark_store",
    .read_blank = "SELECT count(*) = 0 FROM pg_class WHERE relnamespace = current_schema()::regnamespace",
    .set_application_id = "",
    .set_version = "UPDATE witnessmark_store SET version = %1",
    // How many leaves the ledger has.
    .others_commits = "SELECT size FROM tree_edge",
    .after_blanking = "",
    .clock = "SELECT (extract(epoch FROM clock_timestamp()) * 1000)::bigint",
    .login = "SELECT session_user",
    .not_ours = ".sqlite.sql",
};

}  // namespace dialect
}  // namespace wm::db
