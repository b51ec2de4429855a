#include "core/diary/adults.h"

namespace wm {

std::vector<Interval> another_adult_in(const Zone& zone, const ShopHours& hours, const PersonId& one,
                                       const PersonId& other, const Interval& within,
                                       const Under18& under_18) {
  std::vector<Interval> in = common(times_of(zone, hours.two_on_duty, within.from, within.to),
                                    times_open(zone, hours, within.from, within.to));
  for (const AssessorHours& each : hours.assessors) {
    if (each.assessor == one || each.assessor == other || under_18(each.assessor, within.from)) continue;
    for (const Interval& when : times_with(zone, hours, each.assessor, within.from, within.to))
      in.push_back(when);
  }
  return common(joined(std::move(in)), {within});
}

bool enough_adults(const Zone& zone, const ShopHours& hours, const PersonId& one, const PersonId& other,
                   const Interval& when, const Under18& under_18) {
  const bool first = under_18(one, when.from), second = under_18(other, when.from);
  if (!first && !second) return true;
  if (first && second) return false;
  return another_adult_in(zone, hours, one, other, when, under_18) == std::vector<Interval>{when};
}

}  // namespace wm
