#include "app/cli/backup_file.h"

#include <QDateTime>
#include <iostream>

#include "app/backups/backup_head.h"
#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "core/time/text.h"
#include "db/backup/backup.h"
#include "db/sql/server.h"

namespace wm::app {
namespace {

Instant now() { return {QDateTime::currentSecsSinceEpoch()}; }

void say(const db::MissingCommit& commit) {
  std::cout << "  " << commit.number << "  " << to_text(commit.recorded) << "  " << commit.action;
  if (!commit.entered_by.empty()) std::cout << ", by " << commit.entered_by;
  std::cout << '\n';
}

void say(const db::RestorePlan& plan, const std::string& backup, const std::string& store) {
  std::cout << "The backup " << backup << " is whole and has " << plan.commits << " entries.\n";
  if (db::is_on_server(store))
    std::cout << "There is nothing in " << db::shown_name(store) << " yet: nothing is lost.\n";
  else if (!plan.replaces)
    std::cout << "There is no file at " << store << " yet: nothing is lost.\n";
  else if (!plan.readable)
    std::cout << "The file at " << store << " cannot be read, so what would be lost cannot be told.\n";
  else if (plan.lost.empty())
    std::cout << "The file at " << store << " has no entry that the backup has not: nothing is lost.\n";
  else
    std::cout << "The file at " << store << " has " << plan.lost.size()
              << (plan.lost.size() == 1 ? " entry" : " entries") << " that the backup has not:\n";
  for (const db::MissingCommit& commit : plan.lost) say(commit);
}

}  // namespace

int backup_file(const std::string& store, const std::string& folder) {
  const Application application;
  const auto made = db::back_up(store, folder, now());
  if (!made) return refuse(made.error());
  std::cout << made->path << ": " << made->commits << " entries, read back and equal to the store.\n";
  for (const std::string& path : made->removed) std::cout << path << ": older, removed.\n";
  const auto kept = keep_backup_head(made->path, folder);
  return kept ? 0 : refuse(kept.error());
}

int restore_file(const std::string& backup, const std::string& store, bool yes) {
  const Application application;
  const auto plan = db::plan_restore(backup, store);
  if (!plan) return refuse(plan.error());
  say(*plan, backup, store);
  if (!yes) {
    std::cout << "Nothing has been done. With --yes the backup is put in its place.\n";
    return 1;
  }
  const auto kept = db::restore(backup, store, now());
  if (!kept) return refuse(kept.error());
  std::cout << "The backup is in its place.\n";
  if (!kept->empty()) std::cout << "What was there is kept as " << *kept << ".\n";
  return 0;
}

}  // namespace wm::app
