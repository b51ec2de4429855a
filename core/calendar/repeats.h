#pragma once
// The times at which something repeats by a rule of RFC 5545 (3.3.10), found by libical.
#include <optional>
#include <vector>

#include "core/calendar/values.h"

namespace wm::calendar {

/// So many times are gone through in one file before it is refused; a year without one counts as one, and a
/// rule that comes to nothing more as 20,000.
constexpr std::size_t most_times = 200'000;

/// The rule's times on the wall from `first` on, which is the first of them in any case, as long as they
/// begin before `before`. `left` is how many may still be gone through. Nothing where there is a mistake.
std::optional<std::vector<Moment>> repeats(const ContentLine& rule, const Moment& first, Instant before,
                                           std::size_t& left, Mistakes& mistakes);
/// The same for the clocks of a zone: `first` is one of them only where the rule itself has it, since zones
/// are often written with a first day of some year that is none of their changes.
std::optional<std::vector<Moment>> changes_by_rule(const ContentLine& rule, const Moment& first,
                                                   Instant before, std::size_t& left, Mistakes& mistakes);

}  // namespace wm::calendar
