#pragma once
// The quickest way to a standing, and on it the fewest steps.
#include "core/decide/answers.h"
#include "core/decide/engine.h"

namespace wm {

/// The route to at least `to` on x from `from` on. What the steps do to other people's standings is not
/// counted on; how long a session lasts and opening hours are no matter.
Route route(Standings& standings, NameId person, NameId x, Rung to, Instant from);

}  // namespace wm
