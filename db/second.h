#pragma once
// Four eyes: what one person alone may not enter where the rulebook says so.
#include "db/command.h"
#include "db/journal/memory.h"

namespace wm::db {

/// Whether `rulebook`, the one in force or null, asks that a second person vouches for this: to lift a
/// suspension, by ending it or by striking it out; to strike out a check-out that was signed.
bool needs_second(const Memory& memory, const Action& action, const Rulebook* rulebook);
/// That this person may be the second beside `by`: an instructor or a manager, another one, and not whom it
/// is about. Their PIN is for the store to test.
Expected<void> check_second(const Memory& memory, const Action& action, const PersonId& by,
                            const PersonId& second, Instant t);

}  // namespace wm::db
