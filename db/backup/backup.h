#pragma once
// Copies of a store in a folder, dated, checked and thinned; and one of them put back in its place.
#include <string>
#include <vector>

#include "core/problem.h"
#include "core/time/instant.h"

namespace wm::db {

struct BackupMade {
  std::string path;
  std::int64_t commits = 0;          // how many the copy has
  std::vector<std::string> removed;  // older backups of this shop that were thinned out
};

/// Copies a store, which may be in use, into a folder that exists: to a file named after it (on a server:
/// after its database) and `now` in UTC, such as shop-20260314-230000Z.backup. A shop on a server becomes a
/// file too. The copy is on the disk, and has been read back and found equal, when this returns; only then
/// are older ones thinned (keep.h). What is not a backup of this very shop is left alone. Where anything
/// fails the store is untouched and the older backups are all there.
Expected<BackupMade> back_up(const std::string& store, const std::string& folder, Instant now);

/// A backup in its folder.
struct BackupFile {
  std::string path;
  Instant made;
  std::int64_t bytes = 0, commits = 0;
  friend bool operator==(const BackupFile&, const BackupFile&) = default;
};

/// The backups of this very shop in the folder, the latest first. Each was whole when it got its name; it is
/// not read again here. Refuses a folder that is not there.
Expected<std::vector<BackupFile>> backups_in(const std::string& store, const std::string& folder);

/// A commit that the store has and a backup has not.
struct MissingCommit {
  std::int64_t number = 0;
  Instant recorded;
  std::string action;      // the word that the journal has for it: "checkout", "enter_person"
  std::string entered_by;  // a name
  friend bool operator==(const MissingCommit&, const MissingCommit&) = default;
};

/// What putting a backup back would come to.
struct RestorePlan {
  std::int64_t commits = 0;         // of the backup
  bool replaces = false;            // there is a file at the store's place
  bool readable = false;            // and what it holds can be told
  std::vector<MissingCommit> lost;  // in order
  friend bool operator==(const RestorePlan&, const RestorePlan&) = default;
};

/// Checks every page of the backup and compares it with the store. Refuses the backup of another shop; and on
/// a server a database in which there is anything: a backup goes into an empty one.
Expected<RestorePlan> plan_restore(const std::string& backup, const std::string& store);
/// Puts a copy of the backup in the store's place, which no program may have open. The file that was there
/// stays beside it under the dated name that this returns; empty where there was none. At every moment a
/// power cut leaves the one or the other in place, whole. On a server all of it goes in at once, or nothing.
Expected<std::string> restore(const std::string& backup, const std::string& store, Instant now);

}  // namespace wm::db
