#include "app/backups/backup_head.h"

#include "app/start/computer_secret.h"
#include "db/heads.h"

namespace wm::app {
namespace {

Problem without_head(Problem problem) {
  problem.what =
      "The backup is made and whole, but its ledger's root was not kept beside it. " + problem.what;
  return problem;
}

}  // namespace

Expected<void> keep_backup_head(const std::string& copy, const std::string& folder) {
  const auto secret = computer_secret();
  if (!secret) return tl::unexpected(without_head(secret.error()));
  return db::head_of(copy)
      .and_then([&](const ledger::Head& head) { return db::keep_head(folder, head, station_key(*secret)); })
      .map_error(without_head);
}

}  // namespace wm::app
