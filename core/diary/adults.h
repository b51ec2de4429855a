#pragma once
// Whether somebody under 18 would be alone with one adult in the building, as far as hours can tell.
#include <functional>

#include "core/diary/hours.h"

namespace wm {

using Under18 = std::function<bool(const PersonId&, Instant)>;

/// When somebody else than these is in the building: two adults are on duty, so that one of them is none of
/// these, where one of these at most is an adult; or an adult whose own hours it is. As joined() makes it,
/// within [from, to).
std::vector<Interval> another_adult_in(const Zone& zone, const ShopHours& hours,
                                       const std::vector<PersonId>& but_for, const Interval& within,
                                       const Under18& under_18);

/// Whether these two, or three, may be booked with each other for all of `when`: nobody is under 18; or two
/// adults are among them, who are there as long as they are; or one is, and another adult is in throughout.
/// Without an adult among them they are not.
bool enough_adults(const Zone& zone, const ShopHours& hours, const std::vector<PersonId>& together,
                   const Interval& when, const Under18& under_18);

}  // namespace wm
