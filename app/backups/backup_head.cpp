#include "app/backups/backup_head.h"

#include "app/start/computer_secret.h"
#include "db/heads.h"

namespace wm::app {

Expected<void> keep_backup_head(const std::string& copy, const std::string& folder) {
  const auto secret = computer_secret();
  if (!secret) return tl::unexpected(secret.error());
  return db::head_of(copy).and_then(
      [&](const ledger::Head& head) { return db::keep_head(folder, head, station_key(*secret)); });
}

}  // namespace wm::app
