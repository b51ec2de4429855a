// Hours out of their records, in order: the latest of what counts as a whole takes the place of the others.
#include <algorithm>

#include "db/diary/diary.h"

namespace wm::db {
namespace {

template <class F, class Take>
void each_of(const Memory& memory, std::string_view kind, std::optional<Instant> known, const Take& take) {
  for (const std::size_t i : memory.of_kind(kind)) {
    const Entry& entry = memory.entries()[i];
    if (counts(entry, known)) take(*as<F>(entry.fact));
  }
}

OnWeekday on_weekday(const auto& f) { return {f.weekday, {f.from_minute, f.to_minute}}; }

OtherDays other_days(const OtherHours& f, bool none = false) {
  OtherDays out{f.first, f.last, {}};
  if (!none)
    for (const DayPart& each : f.parts) out.hours.push_back({each.from_minute, each.to_minute});
  return out;
}

struct Hourly {
  const Memory& memory;
  std::optional<Instant> known;
  ShopHours hours = {};

  AssessorHours& of(const PersonId& person) {
    const PersonId who = memory.joined(person, known);
    for (AssessorHours& each : hours.assessors)
      if (each.assessor == who) return each;
    hours.assessors.push_back({who, {}, {}, {}});
    return hours.assessors.back();
  }
  std::optional<Schedule>& of(Doing doing) { return doing == Doing::open ? hours.open : hours.staffed; }

  void take(const WeekHours& f) {
    std::optional<Schedule>& schedule = of(f.doing);
    if (!schedule) schedule.emplace();
    schedule->weekly.push_back(on_weekday(f));
    if (f.doing == Doing::staffed && f.adults >= 2) hours.two_on_duty.weekly.push_back(on_weekday(f));
  }
  void take(const OtherHours& f) {
    if (!f.person.empty()) return of(f.person).schedule.other.push_back(other_days(f));
    std::optional<Schedule>& schedule = of(f.doing);
    if (!schedule) schedule = always();  // other hours on some days, and none said for the week
    schedule->other.push_back(other_days(f));
    if (f.doing == Doing::staffed) hours.two_on_duty.other.push_back(other_days(f, f.adults < 2));
  }
  void take(const TakesOn& f) {
    AssessorHours& theirs = of(f.person);
    theirs.longest_day = f.longest_day;
    theirs.stretch =
        f.stretch ? std::optional(Stretch{*f.stretch, f.rest.value_or(0)}) : std::optional<Stretch>{};
  }
  void take(const Busy& f) {
    std::vector<Interval>& busy = of(f.person).schedule.busy;
    busy.clear();
    for (const BusyPart& each : f.parts) busy.push_back({each.from, each.to});
  }
  void take(const Lasts& f) {
    std::erase_if(hours.lengths,
                  [&](const ClassMinutes& each) { return each.machine_class == f.machine_class; });
    hours.lengths.push_back({f.machine_class, f.minutes});
  }
};

}  // namespace

Schedule always() {
  Schedule out;
  for (int day = 0; day < 7; ++day) out.weekly.push_back({day, {0, 24 * 60}});
  return out;
}

ShopHours shop_hours(const Memory& memory, std::optional<Instant> known) {
  Hourly out{memory, known};
  each_of<Hours>(memory, "hours", known,
                 [&](const Hours& f) { out.of(f.person).schedule.weekly.push_back(on_weekday(f)); });
  each_of<Break>(memory, "break", known,
                 [&](const Break& f) { out.of(f.person).schedule.breaks.push_back(on_weekday(f)); });
  each_of<WeekHours>(memory, "week_hours", known, [&](const WeekHours& f) { out.take(f); });
  each_of<OtherHours>(memory, "other_hours", known, [&](const OtherHours& f) { out.take(f); });
  each_of<TakesOn>(memory, "takes_on", known, [&](const TakesOn& f) { out.take(f); });
  each_of<Busy>(memory, "busy", known, [&](const Busy& f) { out.take(f); });
  each_of<Lasts>(memory, "lasts", known, [&](const Lasts& f) { out.take(f); });
  each_of<Upkeep>(memory, "upkeep", known, [&](const Upkeep& f) {
    out.hours.maintenance.push_back({f.machine, {f.from, f.to}});
  });
  return out.hours;
}

DiaryRules diary_rules(const Memory& memory) {
  DiaryRules out;
  each_of<DiaryRules>(memory, "diary_rules", {}, [&](const DiaryRules& f) { out = f; });
  return out;
}

std::optional<NotComeRule> not_come_rule(const DiaryRules& rules) {
  if (!rules.not_come || !rules.not_come_days || !rules.rest_days) return std::nullopt;
  return NotComeRule{*rules.not_come, *rules.not_come_days, *rules.rest_days};
}

}  // namespace wm::db
