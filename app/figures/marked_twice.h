#pragma once
// Performances that more than one assessor marked, out of the journal.
#include <vector>

#include "app/session.h"
#include "core/sheet/agreed.h"

namespace wm::app {

/// As known at the session's date: those whose check-out counts, on the sheet that it was signed on.
std::vector<MarkedTwice> marked_twice(Session& session);

}  // namespace wm::app
