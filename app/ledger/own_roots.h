#pragma once
// The roots of a shop's ledger that this computer has kept outside the shop's file, each signed by its own
// key.
#include <string>
#include <vector>

#include "core/problem.h"
#include "db/verify/verify.h"

namespace wm::app {

/// Adds those that were signed with the key this computer has now: one for each day on which the program was
/// open, and the last up to which the file was looked through here and found fine. Refuses files that are
/// something else, and then adds nothing.
Expected<void> add_own_roots(const std::string& store, verify::Ask& ask);

/// Notes that all was found fine up to this head.
Expected<void> keep_verified(const std::string& store, const ledger::Head& head);

}  // namespace wm::app
