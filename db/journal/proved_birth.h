#pragma once
// What may be kept of a birth date when the date itself is erased.
#include <optional>

#include "core/time/zone.h"
#include "db/journal/memory.h"

namespace wm::db {

/// The day on or before which somebody was born as far as their records have shown: for each age that a
/// rulebook ever asked for, they had it when the first record about them after that birthday came in; the
/// earliest of what follows from these. Answers about then and later stay as they were, where they rest on an
/// age that was shown. Nothing where no birth date is known or no age had been reached.
std::optional<Day> proved_birth(const Memory& memory, const Zone& zone, const PersonId& person, Instant now);

}  // namespace wm::db
