#include "db/backup/backup.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <filesystem>

#include "db/backup/copy.h"
#include "db/backup/keep.h"
#include "db/journal/rows.h"
#include "db/refuse.h"
#include "db/sql/file.h"
#include "db/sql/place.h"
#include "db/sql/server.h"

namespace wm::db {
namespace {

constexpr const char* ending = ".backup";
constexpr const char* unfinished = ".backup.part";

/// Which shop a file is of.
struct Identity {
  ShopDetails details;
  std::string first_command;
  friend bool operator==(const Identity&, const Identity&) = default;
};

Expected<Identity> identity_of(Connection& connection) {
  auto details = read_details(connection);
  if (!details) return tl::make_unexpected(details.error());
  const auto first = first_command(connection);
  if (!first) return tl::make_unexpected(first.error());
  return Identity{std::move(*details), *first};
}

/// What a backup's name begins with: the file's own, or the database's.
QString stem_of(const std::string& store) {
  if (!is_on_server(store)) return QFileInfo(text(store)).completeBaseName();
  const auto address = read_address(store);
  return address ? QString(address->database).replace('/', '_') : QString();
}

tl::unexpected<Problem> no_folder(const std::string& folder) {
  return refuse(folder, "The folder does not exist.", "Make it first, or look whether its disk is there.");
}

/// Files of the folder that are named as backups of this store are; by name alone.
std::vector<BackupFile> named_as_ours(const QDir& folder, const QString& stem, const QString& end) {
  std::vector<BackupFile> found;
  for (const QFileInfo& file : folder.entryInfoList({stem + "-*" + end}, QDir::Files | QDir::NoSymLinks)) {
    const QString name = file.fileName();
    const QString between = name.mid(stem.size() + 1, name.size() - stem.size() - 1 - end.size());
    if (name.startsWith(stem + "-") && name.endsWith(end))
      if (const auto made = read_stamp(between.toStdString()))
        found.push_back({file.absoluteFilePath().toStdString(), *made, file.size(), 0});
  }
  std::sort(found.begin(), found.end(),
            [](const BackupFile& a, const BackupFile& b) { return a.made > b.made; });
  return found;
}

/// Only those that can be opened and are of this shop: what is damaged may be all that is left of something.
std::vector<BackupFile> backups_of(const Identity& shop, const QDir& folder, const QString& stem) {
  std::vector<BackupFile> found = named_as_ours(folder, stem, ending);
  std::erase_if(found, [&](BackupFile& file) {
    const auto connection = open_to_read(file.path);
    if (!connection) return true;
    const auto identity = identity_of(**connection);
    const auto commits = commits_in(**connection);
    if (!identity || *identity != shop || !commits) return true;
    file.commits = *commits;
    return false;
  });
  return found;
}

std::vector<std::string> thin(const Identity& shop, const QDir& folder, const QString& stem,
                              const std::string& made) {
  const auto zone = Zone::named(shop.details.zone);
  const std::vector<BackupFile> all = backups_of(shop, folder, stem);
  std::vector<Instant> times;
  for (const BackupFile& file : all) times.push_back(file.made);
  const std::vector<bool> keep = backups_to_keep(times, zone ? *zone : Zone::utc());
  std::vector<std::string> removed;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (!keep[i] && all[i].path != made && QFile::remove(text(all[i].path))) removed.push_back(all[i].path);
  return removed;
}

}  // namespace

Expected<std::vector<BackupFile>> backups_in(const std::string& store, const std::string& folder) {
  const QDir in(text(folder));
  if (!in.exists()) return no_folder(folder);
  const auto connection = open_to_read(store);
  if (!connection) return tl::make_unexpected(connection.error());
  return identity_of(**connection).map([&](const Identity& shop) {
    return backups_of(shop, in, stem_of(store));
  });
}

Expected<BackupMade> back_up(const std::string& store, const std::string& folder, Instant now) {
  const QDir into(text(folder));
  if (!into.exists()) return no_folder(folder);
  const auto connection = open_to_read(store);
  if (!connection) return tl::make_unexpected(connection.error());
  const auto shop = identity_of(**connection);
  if (!shop) return tl::make_unexpected(shop.error());
  const QString stem = stem_of(store);
  const std::string name = into.absoluteFilePath(stem + "-" + text(stamp(now))).toStdString();
  BackupMade made{name + ending, 0, {}};
  if (QFileInfo::exists(text(made.path)))
    return refuse(made.path, "There is a backup of this second already.", "Try again.");
  // What an earlier one left that was cut off.
  for (const BackupFile& part : named_as_ours(into, stem, unfinished)) QFile::remove(text(part.path));
  const auto commits = is_on_server(store) ? copy_from_server(store, name + unfinished)
                                           : copy_checked(**connection, name + unfinished);
  if (!commits) return tl::make_unexpected(commits.error());
  made.commits = *commits;
  std::error_code error;
  std::filesystem::rename(name + unfinished, made.path, error);
  if (error || !sync_folder(into.absolutePath().toStdString()))
    return refuse(folder, "The disk failed while the backup was being named.",
                  "Check the disk, then try again; the store and older backups are untouched.");
  made.removed = thin(*shop, into, stem, made.path);
  return made;
}

}  // namespace wm::db
