#include <algorithm>

#include "core/diary/slots.h"

namespace wm {
namespace {

/// 1970-01-01 was a Thursday.
int weekday(Day day) { return ((day.number + 3) % 7 + 7) % 7; }

Instant on_wall(const Zone& zone, Day day, int minute) {
  if (minute >= 24 * 60) return zone.start(day + 1);
  return zone.instant({day, minute / 60, minute % 60, 0});
}

std::vector<Interval> joined(std::vector<Interval> stretches) {
  std::sort(stretches.begin(), stretches.end(),
            [](const Interval& a, const Interval& b) { return a.from < b.from; });
  std::vector<Interval> out;
  for (const Interval& stretch : stretches) {
    if (!out.empty() && stretch.from <= out.back().to)
      out.back().to = std::max(out.back().to, stretch.to);
    else
      out.push_back(stretch);
  }
  return out;
}

}  // namespace

std::vector<Interval> times_in(const Zone& zone, const std::vector<WeeklyHours>& hours,
                               const PersonId& person, Instant from, Instant to) {
  std::vector<Interval> stretches;
  // A day more at either end, so that what touches at midnight is seen whole.
  for (Day day = zone.day(from) + -1; day <= zone.day(to) + 1; day = day + 1)
    for (const WeeklyHours& each : hours) {
      if (each.person != person || each.weekday != weekday(day)) continue;
      const Interval stretch{on_wall(zone, day, each.from_minute), on_wall(zone, day, each.to_minute)};
      if (stretch.from < stretch.to) stretches.push_back(stretch);
    }
  std::vector<Interval> out = joined(std::move(stretches));
  std::erase_if(out, [&](const Interval& stretch) { return !overlap(stretch, {from, to}); });
  return out;
}

}  // namespace wm
