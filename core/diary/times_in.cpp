#include <algorithm>

#include "core/diary/slots.h"
#include "core/diary/wall.h"

namespace wm {
std::vector<Interval> times_in(const Zone& zone, const std::vector<WeeklyHours>& hours,
                               const PersonId& person, Instant from, Instant to) {
  std::vector<Interval> stretches;
  // A day more at either end, so that what touches at midnight is seen whole.
  for (Day day = zone.day(from) + -1; day <= zone.day(to) + 1; day = day + 1)
    for (const WeeklyHours& each : hours) {
      if (each.person != person || each.weekday != weekday(day)) continue;
      const Interval stretch{on_wall(zone, day, each.from_minute), on_wall(zone, day, each.to_minute)};
      stretches.push_back(stretch);
    }
  std::vector<Interval> out = joined(std::move(stretches));
  std::erase_if(out, [&](const Interval& stretch) { return !overlap(stretch, {from, to}); });
  return out;
}

}  // namespace wm
