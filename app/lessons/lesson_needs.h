#pragma once
// Who needs a lesson by the rulebook, and who would have to go through it again.
#include <QStringList>

#include "app/session.h"

namespace wm::app {

/// "Tier 2, before working with a supervisor", one for each tier, class or mode whose gates ask for it.
QStringList needed_for(const Rulebook& rulebook, const std::string& lesson);

/// Whose standing ends where they don't go through it again, by when: "Through 14 December: Kim Aoki
/// (bandsaw), …", one for each day; what has no end to wait for is "At once". In order of days.
QStringList again_words(const std::vector<Shift>& shifts, const Session& session);

}  // namespace wm::app
