#include "app/ledger/own_roots.h"

#include <QDir>
#include <QFile>

#include "app/start/computer_secret.h"
#include "app/start/station_folder.h"
#include "core/time/text.h"
#include "db/heads.h"

namespace wm::app {
namespace {

std::string verified_folder(const std::string& store) {
  const QDir folder(station_folder(store));
  folder.mkpath("verified");
  return folder.filePath("verified").toStdString();
}

/// All lines of a folder's file of heads.
Expected<std::vector<verify::KnownRoot>> roots_in(const std::string& folder, const ledger::PublicKey& own,
                                                  const std::string& named) {
  std::vector<verify::KnownRoot> roots;
  const std::string path = db::heads_file(folder);
  QFile file(QString::fromStdString(path));
  if (!file.exists()) return roots;
  if (!file.open(QIODevice::ReadOnly))
    return tl::unexpected(
        Problem{path, "This computer's roots cannot be read.", "Ask for the right to read the file."});
  for (int line = 1; !file.atEnd(); ++line) {
    auto root = verify::read_known_root(named, file.readLine().trimmed().toStdString());
    if (!root || !root->full)
      return tl::unexpected(Problem{path + ", line " + std::to_string(line),
                                    "This is not a root that this computer keeps.",
                                    "Keep the file aside; another is begun."});
    if (root->full->key != own) continue;
    root->own = true;
    root->name += " " + to_text(root->full->head.at);
    roots.push_back(std::move(*root));
  }
  return roots;
}

}  // namespace

Expected<void> add_own_roots(const std::string& store, verify::Ask& ask) {
  const auto secret = computer_secret();
  if (!secret) return tl::unexpected(secret.error());
  const ledger::PublicKey own = station_key(*secret).public_key();
  auto kept = roots_in(station_folder(store).toStdString(), own, "the root that this computer kept");
  if (!kept) return tl::unexpected(kept.error());
  auto verified = roots_in(verified_folder(store), own, "the root up to which all was found fine here");
  if (!verified) return tl::unexpected(verified.error());
  ask.against.insert(ask.against.end(), kept->begin(), kept->end());
  if (!verified->empty()) ask.verified = std::move(verified->back());
  return {};
}

Expected<void> keep_verified(const std::string& store, const ledger::Head& head) {
  return computer_secret().and_then([&](const ledger::Secret& secret) {
    return db::keep_head(verified_folder(store), head, station_key(secret));
  });
}

}  // namespace wm::app
