#pragma once
// Whether somebody under 18 would be alone with one adult in the building, as far as hours can tell.
#include <functional>

#include "core/diary/hours.h"

namespace wm {

using Under18 = std::function<bool(const PersonId&, Instant)>;

/// When somebody else than these two is in the building: two adults are on duty, so that one of them is
/// neither; or an adult whose own hours it is. As joined() makes it, within [from, to).
std::vector<Interval> another_adult_in(const Zone& zone, const ShopHours& hours, const PersonId& one,
                                       const PersonId& other, const Interval& within,
                                       const Under18& under_18);

/// Whether these two may be booked with each other for all of `when`: both are adults, or one is and another
/// adult is in throughout. Two who are both under 18 are not booked with each other.
bool enough_adults(const Zone& zone, const ShopHours& hours, const PersonId& one, const PersonId& other,
                   const Interval& when, const Under18& under_18);

}  // namespace wm
