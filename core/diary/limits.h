#pragma once
// Whether one more one-on-one is within what an assessor takes on.
#include "core/diary/hours.h"

namespace wm {

/// With all that is booked kept. As the matching counts (core/match): the longest day is of one-on-ones that
/// they give, by the day on which each begins; a stretch counts those that they take too.
bool within_limits(const Zone& zone, const AssessorLimits& limits, const std::vector<Booked>& booked,
                   const Interval& when);

}  // namespace wm
