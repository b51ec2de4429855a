#include "core/diary/hours.h"

#include <algorithm>

#include "core/diary/wall.h"

namespace wm {
namespace {

Interval on(const Zone& zone, Day day, const WallStretch& when) {
  return {on_wall(zone, day, when.from_minute), on_wall(zone, day, when.to_minute)};
}

std::vector<Interval> on_day(const Zone& zone, Day day, const std::vector<OnWeekday>& weekly) {
  std::vector<Interval> out;
  for (const OnWeekday& each : weekly)
    if (each.weekday == weekday(day)) out.push_back(on(zone, day, each.when));
  return joined(std::move(out));
}

std::vector<Interval> on_day(const Zone& zone, Day day, const Schedule& schedule) {
  const auto other = std::find_if(schedule.other.rbegin(), schedule.other.rend(), [&](const OtherDays& each) {
    return each.first <= day && day <= each.last;
  });
  if (other == schedule.other.rend())
    return without(on_day(zone, day, schedule.weekly), on_day(zone, day, schedule.breaks));
  std::vector<Interval> out;
  for (const WallStretch& each : other->hours) out.push_back(on(zone, day, each));
  return joined(std::move(out));
}

std::vector<Interval> overlapping(std::vector<Interval> all, const Interval& within) {
  std::erase_if(all, [&](const Interval& each) { return !overlap(each, within); });
  return all;
}

const AssessorHours* of(const ShopHours& hours, const PersonId& assessor) {
  const auto found = std::find_if(hours.assessors.begin(), hours.assessors.end(),
                                  [&](const AssessorHours& each) { return each.assessor == assessor; });
  return found == hours.assessors.end() ? nullptr : &*found;
}

}  // namespace

std::vector<Interval> times_of(const Zone& zone, const Schedule& schedule, Instant from, Instant to) {
  std::vector<Interval> all;
  // A day more at either end, so that what touches at midnight is seen whole.
  for (Day day = zone.day(from) + -1; day <= zone.day(to) + 1; day = day + 1)
    for (const Interval& each : on_day(zone, day, schedule)) all.push_back(each);
  return overlapping(without(joined(std::move(all)), joined(schedule.busy)), {from, to});
}

int minutes_for(const ShopHours& hours, const TargetName& target) {
  for (const ClassMinutes& each : hours.lengths)
    if (each.machine_class == class_of(target)) return each.minutes;
  return 60;
}

std::vector<Interval> times_with(const Zone& zone, const ShopHours& hours, const PersonId& assessor,
                                 Instant from, Instant to) {
  const AssessorHours* theirs = of(hours, assessor);
  if (!theirs) return {};
  const std::vector<Interval> in = times_of(zone, theirs->schedule, from, to);
  return overlapping(common(in, times_open(zone, hours, from, to)), {from, to});
}

std::vector<Interval> times_open(const Zone& zone, const ShopHours& hours, Instant from, Instant to) {
  std::vector<Interval> out{{first_instant, last_instant}};
  for (const auto* shop : {&hours.open, &hours.staffed})
    if (*shop) out = common(out, times_of(zone, **shop, from, to));
  return out;
}

std::vector<AssessorLimits> limits_of(const ShopHours& hours) {
  std::vector<AssessorLimits> out;
  for (const AssessorHours& each : hours.assessors)
    if (each.longest_day || each.stretch) out.push_back({each.assessor, each.longest_day, each.stretch});
  return out;
}

void ask_hours(SlotQuestion& question, const ShopHours& hours, const TargetName& target) {
  question.minutes = minutes_for(hours, target);
  question.maintenance = hours.maintenance;
  question.assessors.clear();
  question.in.clear();
  for (const AssessorHours& each : hours.assessors) {
    question.assessors.push_back(each.assessor);
    question.in.push_back(
        {each.assessor, times_with(question.zone, hours, each.assessor, question.from, question.to)});
  }
}

}  // namespace wm
