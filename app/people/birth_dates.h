#pragma once
// Birth dates for telling doubles apart: never shown.
#include <vector>

#include "app/people/match.h"
#include "app/session.h"

namespace wm::app {

/// Everybody with the birth date that counts for them, for `likely_doubles`.
std::vector<KnownPerson> known_people(const Session& session);

}  // namespace wm::app
