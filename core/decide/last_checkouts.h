#pragma once
// Which check-outs stand last, so that what they left open is still open.
#include <vector>

#include "core/decide/engine.h"

namespace wm {

/// As Decider::last_checkouts: each once, sorted.
std::vector<RecordId> last_checkouts(Standings& standings, NameId person, NameId x, Instant t);

}  // namespace wm
