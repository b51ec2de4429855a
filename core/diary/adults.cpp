#include "core/diary/adults.h"

#include <algorithm>

namespace wm {

std::vector<Interval> another_adult_in(const Zone& zone, const ShopHours& hours,
                                       const std::vector<PersonId>& but_for, const Interval& within,
                                       const Under18& under_18) {
  std::vector<Interval> in = common(times_of(zone, hours.two_on_duty, within.from, within.to),
                                    times_open(zone, hours, within.from, within.to));
  for (const AssessorHours& each : hours.assessors) {
    if (std::find(but_for.begin(), but_for.end(), each.assessor) != but_for.end()) continue;
    if (under_18(each.assessor, within.from)) continue;
    for (const Interval& when : times_with(zone, hours, each.assessor, within.from, within.to))
      in.push_back(when);
  }
  return common(joined(std::move(in)), {within});
}

bool enough_adults(const Zone& zone, const ShopHours& hours, const std::vector<PersonId>& together,
                   const Interval& when, const Under18& under_18) {
  const auto adults = std::count_if(together.begin(), together.end(),
                                    [&](const PersonId& who) { return !under_18(who, when.from); });
  if (adults >= 2 || adults == static_cast<std::ptrdiff_t>(together.size())) return true;
  if (adults == 0) return false;
  return another_adult_in(zone, hours, together, when, under_18) == std::vector<Interval>{when};
}

}  // namespace wm
