#include "core/diary/limits.h"

#include <algorithm>

namespace wm {
namespace {

std::int64_t seconds(const Interval& when) { return when.to.seconds - when.from.seconds; }

bool day_holds(const Zone& zone, const AssessorLimits& limits, const std::vector<Booked>& booked,
               const Interval& when) {
  std::int64_t given = seconds(when);
  for (const Booked& each : booked)
    if (each.assesses(limits.assessor) && zone.day(each.when.from) == zone.day(when.from))
      given += seconds(each.when);
  return given <= std::int64_t{60} * *limits.longest_day;
}

bool stretch_holds(const AssessorLimits& limits, const std::vector<Booked>& booked, const Interval& when) {
  // Those that lie closer than a rest are one stretch: each made longer by it, they touch.
  const std::int64_t rest = std::int64_t{60} * limits.stretch->rest;
  std::vector<Interval> longer{{when.from, when.to + rest}};
  for (const Booked& each : booked)
    if (each.takes(limits.assessor)) longer.push_back({each.when.from, each.when.to + rest});
  std::sort(longer.begin(), longer.end(),
            [](const Interval& a, const Interval& b) { return a.from < b.from; });
  Interval stretch = longer.front();
  for (const Interval& each : longer) {
    // A break of a whole rest ends a stretch.
    if (each.from >= stretch.to) {
      if (overlap(stretch, when)) break;
      stretch = each;
    }
    stretch.to = std::max(stretch.to, each.to);
  }
  return seconds(stretch) - rest <= std::int64_t{60} * limits.stretch->minutes;
}

}  // namespace

bool within_limits(const Zone& zone, const AssessorLimits& limits, const std::vector<Booked>& booked,
                   const Interval& when) {
  return (!limits.longest_day || day_holds(zone, limits, booked, when)) &&
         (!limits.stretch || stretch_holds(limits, booked, when));
}

}  // namespace wm
