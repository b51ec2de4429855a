#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <filesystem>
#include <map>

#include "db/backup/backup.h"
#include "db/backup/copy.h"
#include "db/journal/rows.h"
#include "db/move.h"
#include "db/refuse.h"
#include "db/sql/dialect.h"
#include "db/sql/file.h"
#include "db/sql/place.h"
#include "db/sql/server.h"

namespace wm::db {
namespace {

namespace fs = std::filesystem;

struct Line {
  std::string command;
  MissingCommit commit;
};

/// Of a backup that an earlier version made.
Expected<std::vector<Line>> earlier_lines_of(Connection& connection) {
  std::vector<Line> lines;
  auto done = connection.each(
      "SELECT c.command_id, c.commit_no, c.recorded_at, c.action, "
      "coalesce(nullif(trim(p.given || ' ' || p.family), ''), c.entered_by) "
      "FROM commits c LEFT JOIN people p ON p.id = c.entered_by ORDER BY c.commit_no",
      [&](const QSqlQuery& row) {
        lines.push_back({text(row.value(0)),
                         {row.value(1).toLongLong(), Instant{row.value(2).toLongLong()}, text(row.value(3)),
                          text(row.value(4))}});
      });
  return done.map([&] { return std::move(lines); });
}

Expected<std::vector<Line>> lines_of(Connection& connection) {
  const auto earlier = is_before_ledger(connection);
  if (!earlier) return tl::make_unexpected(earlier.error());
  if (*earlier) return earlier_lines_of(connection);
  Memory memory;
  if (auto read = read_new(connection, memory); !read) return tl::make_unexpected(read.error());
  std::vector<Line> lines;
  Expected<void> readable;
  std::int64_t last = 0;
  auto done = connection.each(
      "SELECT id, commit_no, recorded_at, leaf FROM records ORDER BY ord", [&](const QSqlQuery& row) {
        if (row.value(1).toLongLong() == last || !readable) return;
        last = row.value(1).toLongLong();
        const auto origin = origin_of(text(row.value(3)));
        if (!origin) {
          readable = tl::make_unexpected(origin.error());
          return;
        }
        const Person* by = memory.person(origin->by);
        const std::string name = by == nullptr || *by == nameless(by->id) ? origin->by : memory.name(by->id);
        lines.push_back(
            {text(row.value(0)), {last, Instant{row.value(2).toLongLong()}, origin->action, name}});
      });
  if (done) done = readable;
  return done.map([&] { return std::move(lines); });
}

Expected<std::vector<Line>> lines_of(const std::string& path) {
  auto connection = open_to_read(path);
  if (!connection) return tl::make_unexpected(connection.error());
  return lines_of(**connection);
}

/// How many commits two files have in common from the first on.
std::size_t common(const std::vector<Line>& a, const std::vector<Line>& b) {
  std::size_t n = 0;
  while (n < a.size() && n < b.size() && a[n].command == b[n].command &&
         a[n].commit.recorded == b[n].commit.recorded)
    ++n;
  return n;
}

Problem disk_failed(const std::string& store) {
  return {store, "The disk failed while the backup was being put in place.",
          "Check the disk, look which file is there, and try again; both are kept."};
}

/// Takes what lies beside the place of the store out of the way of the file that comes there: a log applied
/// to another file would spoil it.
bool move_beside(const std::string& store, const std::string& kept) {
  std::error_code error;
  for (const char* end : {"-wal", "-journal"})
    if (fs::exists(store + end, error)) fs::rename(store + end, kept + end, error);
  if (!error) fs::remove(store + "-shm", error);
  return !error;
}

/// Gives the file at the store's place a second name, so that it stays when another takes the first.
bool name_again(const std::string& store, const std::string& kept) {
  std::error_code error;
  fs::create_hard_link(store, kept, error);
  if (!error) return true;
  // Some file systems know no second names. Reading the file lets go of the lock that keeps others out of it
  // (sqlite.org/howtocorrupt.html, 2.2), which is why this is not the first choice.
  fs::copy_file(store, kept, error);
  return !error && sync_file(kept);
}

/// That a database has nothing in it, as a backup needs it.
Expected<void> check_blank_there(const std::string& store) {
  const auto blank = Connection(store, StoreOptions().busy_ms).value(dialect::postgres.read_blank);
  if (!blank) return tl::make_unexpected(blank.error());
  if (blank->toBool()) return {};
  return refuse(shown_name(store), "There is something in this database already, and it stays as it is.",
                "Make an empty database for the backup, and give the address of that.");
}

/// By way of a copy: opening it as a store would bring the backup itself up to date.
Expected<void> restore_on_server(const std::string& backup, const std::string& store) {
  const QTemporaryDir folder;
  const std::string fresh = folder.filePath("backup").toStdString();
  const auto from = open_to_read(backup);
  if (!from) return tl::make_unexpected(from.error());
  return copy_checked(**from, fresh)
      .and_then([&](std::int64_t) { return move_store(fresh, store); })
      .map([](const ledger::Head&) {});
}

}  // namespace

Expected<RestorePlan> plan_restore(const std::string& backup, const std::string& store) {
  const auto connection = open_to_read(backup);
  if (!connection) return tl::make_unexpected(connection.error());
  if (auto fine = check_every_page(**connection); !fine) return tl::make_unexpected(fine.error());
  const auto here = lines_of(**connection);
  if (!here) return tl::make_unexpected(here.error());
  RestorePlan plan;
  plan.commits = static_cast<std::int64_t>(here->size());
  if (is_on_server(store)) return check_blank_there(store).map([&] { return plan; });
  plan.replaces = QFileInfo::exists(text(store));
  if (!plan.replaces) return plan;
  if (QFileInfo(text(store)).canonicalFilePath() == QFileInfo(text(backup)).canonicalFilePath())
    return refuse(store, "This is the backup itself.", "Give the place of the store as the second path.");
  const auto there = lines_of(store);
  if (!there) return plan;
  plan.readable = true;
  const std::size_t same = common(*here, *there);
  if (same == 0 && !here->empty() && !there->empty())
    return refuse(backup, "The backup is of another shop than the file at " + store + ".",
                  "Choose a backup of this shop, or a place where there is no file.");
  for (std::size_t i = same; i < there->size(); ++i) plan.lost.push_back((*there)[i].commit);
  return plan;
}

Expected<std::string> restore(const std::string& backup, const std::string& store, Instant now) {
  if (const auto plan = plan_restore(backup, store); !plan) return tl::make_unexpected(plan.error());
  if (is_on_server(store)) return restore_on_server(backup, store).map([] { return std::string(); });
  const QFileInfo place(text(store));
  const std::string folder = place.absolutePath().toStdString();
  const std::string kept = folder + "/" + place.completeBaseName().toStdString() + "-replaced-" + stamp(now) +
                           (place.suffix().isEmpty() ? "" : "." + place.suffix().toStdString());
  if (QFileInfo::exists(text(kept)))
    return refuse(kept, "There is a file of this name already.", "Try again in a second.");
  const std::string fresh = store + ".restoring";
  {
    const auto from = open_to_read(backup);
    if (!from) return tl::make_unexpected(from.error());
    if (auto copied = copy_checked(**from, fresh); !copied) return tl::make_unexpected(copied.error());
  }
  const bool replaces = QFileInfo::exists(text(store));
  std::unique_ptr<Connection> old;
  if (replaces) {
    // All of it into the one file, and nobody else in it until the other has taken its place. What is damaged
    // goes as it is.
    old = std::make_unique<Connection>(store, StoreOptions().busy_ms);
    auto alone = old->value(dialect::leave_log);
    QSqlError error;
    if (alone && text(*alone) == "delete") (void)old->run(dialect::begin_alone, error);
    const int code = error.nativeErrorCode().toInt() & 0xff;
    if ((alone && text(*alone) != "delete") || code == dialect::busy || code == dialect::locked ||
        (!alone && alone.error().what.find("locked") != std::string::npos)) {
      QFile::remove(text(fresh));
      return refuse(store, "Another program has the shop open.", "Close it everywhere, then try again.");
    }
    if (!name_again(store, kept)) {
      QFile::remove(text(fresh));
      return tl::make_unexpected(disk_failed(store));
    }
  }
  if (!move_beside(store, kept) || !sync_folder(folder)) return tl::make_unexpected(disk_failed(store));
  std::error_code error;
  fs::rename(fresh, store, error);
  if (error || !sync_folder(folder)) return tl::make_unexpected(disk_failed(store));
  return replaces ? kept : std::string();
}

}  // namespace wm::db
