#include "db/backup/copy.h"

#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <future>

#include "core/time/text.h"
#include "db/backup/same_content.h"
#include "db/move.h"
#include "db/refuse.h"
#include "db/sql/dialect.h"
#include "db/sql/file.h"
#include "db/sql/place.h"

namespace wm::db {
namespace {

Problem not_written(const std::string& to, const QSqlError& error, Problem problem) {
  const std::string folder = QFileInfo(text(to)).absolutePath().toStdString();
  switch (error.nativeErrorCode().toInt() & 0xff) {
    case dialect::full:
      return {folder, "The disk is full; no copy was made.", "Make room there, or choose another folder."};
    case dialect::io_error:
    case dialect::cannot_open:
      return {folder, "The copy could not be written.",
              "Check the disk and the right to the folder, then try again."};
    default:
      return problem;
  }
}

/// How many commits the copy has, as it is on the disk.
Expected<std::int64_t> read_back(const std::string& path) {
  auto connection = open_to_read(path);
  if (!connection) return tl::make_unexpected(connection.error());
  if (auto fine = check_pages(**connection); !fine) return tl::make_unexpected(fine.error());
  return commits_in(**connection);
}

Expected<std::int64_t> copy_once(Connection& from, const std::string& to, bool& moved_on) {
  const auto before = from.value(dialect::others_commits);
  if (!before) return tl::make_unexpected(before.error());
  QSqlError error;
  if (auto done = from.run(dialect::copy_into, {text(to)}, error); !done)
    return tl::make_unexpected(not_written(to, error, done.error()));
  if (!sync_file(to))
    return refuse(to, "The disk failed while the copy was being made safe.",
                  "Check the disk, then try again; what was copied is untouched.");
  // Two looks at once: the copy's pages by themselves, and its rows beside the store's.
  auto reading_back = std::async(std::launch::async, read_back, to);
  const auto copied = verify::File::open(to);
  const bool same = copied && same_content(*copied, from.path());
  const auto commits = reading_back.get();
  if (!commits) return commits;
  if (!copied) return tl::make_unexpected(copied.error());
  if (same) return commits;
  // Another program may have entered something between the two looks.
  const auto after = from.value(dialect::others_commits);
  if (!after) return tl::make_unexpected(after.error());
  moved_on = *after != *before;
  return refuse(to, "The copy differs from the store.",
                "Check the disk that it was written to, or choose another folder.");
}

}  // namespace

Expected<std::int64_t> copy_checked(Connection& from, const std::string& to) {
  constexpr int tries = 5;
  for (int i = 1;; ++i) {
    bool moved_on = false;
    QFile::remove(text(to));
    auto done = copy_once(from, to, moved_on);
    if (done) return done;
    QFile::remove(text(to));
    if (!moved_on || i == tries) return done;
  }
}

Expected<std::int64_t> copy_from_server(const std::string& store, const std::string& to) {
  const auto away = [&] {
    for (const char* end : {"", "-wal", "-shm"}) QFile::remove(text(to + end));
  };
  away();
  // Wherever the folder is: nobody works in a backup.
  StoreOptions anywhere;
  anywhere.on_network = [](const std::string&) { return false; };
  auto done = move_store(store, to, anywhere).and_then([&](const ledger::Head&) -> Expected<std::int64_t> {
    // One file, with no log beside it.
    if (auto alone = Connection(to, StoreOptions().busy_ms).value(dialect::leave_log); !alone)
      return tl::make_unexpected(alone.error());
    if (!sync_file(to))
      return refuse(to, "The disk failed while the copy was being made safe.",
                    "Check the disk, then try again; the shop on the server is untouched.");
    return read_back(to);
  });
  if (!done) away();
  return done;
}

std::string stamp(Instant t) {
  std::string written = to_text(t);
  std::erase_if(written, [](char c) { return c == '-' || c == ':'; });
  std::replace(written.begin(), written.end(), 'T', '-');
  return written;
}

std::optional<Instant> read_stamp(const std::string& text) {
  if (text.size() != 16 || text[8] != '-' || text[15] != 'Z') return std::nullopt;
  return parse_instant(text.substr(0, 4) + "-" + text.substr(4, 2) + "-" + text.substr(6, 2) + "T" +
                       text.substr(9, 2) + ":" + text.substr(11, 2) + ":" + text.substr(13, 2) + "Z");
}

}  // namespace wm::db
