#include "db/sql/file.h"

#include <QFile>
#include <QFileInfo>

#include "db/journal/rows.h"
#include "db/refuse.h"
#include "db/sql/dialect.h"
#include "db/sql/migrate.h"
#include "db/sql/place.h"
#include "db/sql/server.h"

namespace wm::db {
namespace {

Expected<void> check_folder(const std::string& path, const StoreOptions& options) {
  const QFileInfo folder(QFileInfo(text(path)).absolutePath());
  if (!folder.isDir())
    return refuse(path, "The folder does not exist.", "Make the folder first, or choose another.");
  const std::string name = folder.filePath().toStdString();
  if (options.on_network ? options.on_network(name) : on_network(name))
    return refuse(path, "The folder lies on another computer, where the file cannot be kept safe.",
                  "Keep the shop's file on this computer's own disk.");
  if (!folder.isWritable())
    return refuse(path, "The folder cannot be written to.",
                  "Ask for the right to write to it, or choose another.");
  return {};
}

Expected<void> check_file(const std::string& path) {
  const QFileInfo file(text(path));
  if (!file.exists())
    return refuse(path, "The file does not exist.", "Choose the shop's file, or make a new shop.");
  if (!file.isFile()) return refuse(path, "This is not a file.", "Choose the shop's file.");
  if (!file.isReadable() || !file.isWritable())
    return refuse(path, "The file cannot be written to.", "Ask for the right to read and write it.");
  return {};
}

Problem there_already(const std::string& path) {
  return {path, "There is a file of this name already.", "Open it, or choose another name."};
}

Problem not_blank_there(const std::string& where) {
  return {where, "There is something in this database already.",
          "Open it, or make an empty one for the shop."};
}

/// Refuses a file or a database that has anything in it, ours or not.
Expected<void> check_blank(Connection& connection) {
  auto blank = connection.value(connection.dialect().read_blank);
  if (blank && blank->toBool()) return {};
  return tl::make_unexpected(!blank                   ? blank.error()
                             : connection.on_server() ? not_blank_there(connection.shown())
                                                      : there_already(connection.path()));
}

/// Why it is none of ours.
tl::unexpected<Problem> not_ours(Connection& connection) {
  const bool blank = check_blank(connection).has_value();
  if (connection.on_server())
    return refuse(connection.shown(),
                  blank ? "The database is empty: no shop was ever kept in it."
                        : "The database is not a shop's of this program.",
                  "Choose the shop's own database, or make a new shop there.");
  if (blank)
    return refuse(connection.path(), "The file is empty: no shop was ever kept in it.",
                  "Choose the shop's own file, or make a new shop under this name.");
  return refuse(connection.path(), "The file is not a shop's file of this program.",
                "Choose the shop's own file.");
}

/// Before anything is written: is it ours, and do we know its version?
Expected<int> version_of(Connection& connection) {
  auto id = connection.value(connection.dialect().read_application_id);
  if (!id) return tl::make_unexpected(id.error());
  if (id->toInt() != dialect::application_id) return not_ours(connection);
  auto version = connection.value(connection.dialect().read_version);
  if (!version) return tl::make_unexpected(version.error());
  if (version->toInt() < 1)  // a shop gets its first with its tables
    return refuse(
        connection.shown(),
        "The file is damaged: it says that it is of version " + std::to_string(version->toInt()) + ".",
        "Bring back the last backup, and keep this file.");
  if (version->toInt() > newest_version())
    return refuse(connection.shown(),
                  connection.on_server()
                      ? "The shop was brought up to date by a newer version of this program."
                      : "The file was written by a newer version of this program.",
                  connection.on_server() ? "Update the program on this computer, then open the shop again."
                                         : "Update the program on this computer, then open the file again.");
  return version->toInt();
}

Expected<void> check_by(Connection& connection, const char* check) {
  auto found = connection.value(check);
  if (!found) return tl::make_unexpected(found.error());
  if (text(*found) == "ok") return {};
  return refuse(connection.path(), "The file is damaged: " + text(*found) + ".",
                "Bring back the last backup, and keep this file.");
}

/// Also finds out, by beginning to write, whether another program holds the file.
Expected<void> update(Connection& connection, int version) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) return tl::make_unexpected(transaction.error());
  if (version < newest_version()) {
    if (auto done = migrate(connection, version); !done) return done;
  }
  return transaction->commit();
}

/// The file's name, and that of the log beside it.
Expected<void> keep_names(const std::string& path) {
  if (is_on_server(path)) return {};
  if (sync_folder(QFileInfo(text(path)).absolutePath().toStdString())) return {};
  return refuse(path, "The disk failed while the folder was being written.",
                "Check the disk and how it is connected, then try again.");
}

Expected<void> found_shop(Connection& connection, const ShopDetails& details, const Fill& fill) {
  if (auto done = connection.settle(); !done) return done;
  auto transaction = Transaction::begin_new(connection);
  if (!transaction) return tl::make_unexpected(transaction.error());
  // Another program may have been faster.
  if (auto blank = check_blank(connection); !blank) return blank;
  if (const QString set = connection.dialect().set_application_id; !set.isEmpty())
    if (auto done = connection.run(set.arg(dialect::application_id)); !done) return done;
  if (auto done = migrate(connection, 0); !done) return done;
  auto row =
      connection.run("INSERT INTO shop (one, name, zone, demo_clock) VALUES (1, ?, ?, ?)",
                     {text(details.name), text(details.zone), static_cast<qlonglong>(details.demo_clock)});
  if (!row) return tl::make_unexpected(row.error());
  if (auto done = begin_tree(connection, details); !done) return done;
  if (auto done = fill ? fill(connection) : Expected<void>{}; !done) return done;
  return transaction->commit().and_then([&] { return keep_names(connection.path()); });
}

/// Only what nothing is in: where the disk failed at the last moment, the shop may be there.
void remove_blank(const std::string& path, int busy_ms) {
  Connection connection(path, busy_ms);
  auto transaction = Transaction::begin_new(connection);
  if (!transaction || !check_blank(connection)) return;
  for (const char* end : {"", "-wal", "-shm", "-journal"}) QFile::remove(text(path + end));
}

/// In a database that somebody made for it, with nothing in it yet.
Expected<std::unique_ptr<Connection>> create_on_server(const std::string& uri, const ShopDetails& details,
                                                       const StoreOptions& options, const Fill& fill) {
  if (const auto address = read_address(uri); !address) return tl::make_unexpected(address.error());
  auto connection = std::make_unique<Connection>(uri, options.busy_ms);
  return found_shop(*connection, details, fill).map([&] { return std::move(connection); });
}

Expected<std::unique_ptr<Connection>> open_on_server(const std::string& uri, const StoreOptions& options) {
  if (const auto address = read_address(uri); !address) return tl::make_unexpected(address.error());
  auto connection = std::make_unique<Connection>(uri, options.busy_ms);
  const auto version = version_of(*connection);
  if (!version) return tl::make_unexpected(version.error());
  auto done = connection->settle();
  // Only who owns the tables may bring them up to date; a desk waits for nobody when it opens the shop.
  if (done && *version < newest_version()) done = update(*connection, *version);
  if (!done) return tl::make_unexpected(done.error());
  return connection;
}

}  // namespace

Expected<std::unique_ptr<Connection>> create_store(const std::string& path, const ShopDetails& details,
                                                   const StoreOptions& options, const Fill& fill) {
  if (is_on_server(path)) return create_on_server(path, details, options, fill);
  if (auto fine = check_folder(path, options); !fine) return tl::make_unexpected(fine.error());
  QFile file(text(path));
  // Made by whoever is first, so that two programs cannot both make it. A file that a power cut left with
  // nothing in it is as good as none.
  const bool made = file.open(QIODevice::WriteOnly | QIODevice::NewOnly);
  file.close();
  if (!made && !QFileInfo::exists(text(path)))
    return refuse(path, "The file cannot be made here.", "Choose a folder that you may write to.");
  if (!made && !QFileInfo(text(path)).isFile()) return tl::make_unexpected(there_already(path));
  auto connection = std::make_unique<Connection>(path, options.busy_ms);
  auto done = made ? Expected<void>{}
                   : check_blank(*connection).map_error([&](const Problem&) { return there_already(path); });
  if (done) done = found_shop(*connection, details, fill);
  if (done) return connection;
  connection.reset();
  if (made) remove_blank(path, options.busy_ms);
  return tl::make_unexpected(done.error());
}

Expected<std::unique_ptr<Connection>> open_to_read(const std::string& path) {
  if (is_on_server(path)) {
    if (const auto address = read_address(path); !address) return tl::make_unexpected(address.error());
  } else if (const QFileInfo file(text(path)); !file.isFile())
    return refuse(path, file.exists() ? "This is not a file." : "The file does not exist.",
                  "Look at the path again.");
  auto connection = std::make_unique<Connection>(path, StoreOptions().busy_ms);
  if (const auto version = version_of(*connection); !version) return tl::make_unexpected(version.error());
  return connection;
}

Expected<bool> is_before_ledger(Connection& connection) {
  return connection.value(connection.dialect().read_version).map([](const QVariant& version) {
    return version.toInt() < 3;
  });
}

Expected<bool> is_of_newest_version(Connection& connection) {
  return connection.value(connection.dialect().read_version).map([](const QVariant& version) {
    return version.toInt() == newest_version();
  });
}

Expected<std::int64_t> commits_in(Connection& connection) {
  const auto earlier = is_before_ledger(connection);
  if (!earlier) return tl::make_unexpected(earlier.error());
  return connection
      .value(
          *earlier
              ? "SELECT count(*) FROM commits"
              : "SELECT coalesce(max(commit_no), 0) FROM records WHERE ord = (SELECT max(ord) FROM records)")
      .map([](const QVariant& count) { return static_cast<std::int64_t>(count.toLongLong()); });
}

Expected<std::string> first_command(Connection& connection) {
  const auto earlier = is_before_ledger(connection);
  if (!earlier) return tl::make_unexpected(earlier.error());
  return connection
      .value(*earlier ? "SELECT command_id FROM commits WHERE commit_no = 1"
                      : "SELECT id FROM records WHERE ord = 1")
      .map([](const QVariant& id) { return text(id); });
}

Expected<void> check_every_page(Connection& connection) { return check_by(connection, dialect::whole_check); }
Expected<void> check_pages(Connection& connection) { return check_by(connection, dialect::quick_check); }

Expected<std::unique_ptr<Connection>> open_store(const std::string& path, const StoreOptions& options) {
  if (is_on_server(path)) return open_on_server(path, options);
  if (auto fine = check_file(path); !fine) return tl::make_unexpected(fine.error());
  if (auto fine = check_folder(path, options); !fine) return tl::make_unexpected(fine.error());
  auto connection = std::make_unique<Connection>(path, options.busy_ms);
  auto version = version_of(*connection);
  if (!version) return tl::make_unexpected(version.error());
  if (auto fine = check_by(*connection, dialect::quick_check); !fine)
    return tl::make_unexpected(fine.error());
  if (auto done = connection->settle(); !done) return tl::make_unexpected(done.error());
  if (auto done = update(*connection, *version); !done) return tl::make_unexpected(done.error());
  if (auto done = keep_names(path); !done) return tl::make_unexpected(done.error());
  return connection;
}

}  // namespace wm::db
