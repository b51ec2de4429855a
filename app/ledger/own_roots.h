#pragma once
// The roots of a shop's ledger that this computer has kept outside the shop's file, each signed by its own
// key.
#include <string>
#include <vector>

#include "core/problem.h"
#include "db/verify/verify.h"

namespace wm::app {

struct OwnRoots {
  /// One for each day on which the program was open, the earliest first.
  std::vector<verify::KnownRoot> kept;
  /// The last up to which the file was looked through here and found fine.
  std::optional<verify::KnownRoot> verified;
};

/// Those that were signed with the key this computer has now. Refuses files that are something else.
Expected<OwnRoots> own_roots(const std::string& store);

/// Notes that all was found fine up to this head.
Expected<void> keep_verified(const std::string& store, const ledger::Head& head);

}  // namespace wm::app
