// Hours, and how the shop books: ranges, and what can be so.
#include "db/check/checks.h"

namespace wm::db {
namespace {

constexpr int whole_day = 24 * 60;
constexpr std::size_t most_parts = 24, most_busy = 20'000;

bool is_part_of_day(int from, int to) { return from >= 0 && from < to && to <= whole_day; }

Expected<void> check_weekly(int weekday, int from, int to) {
  if (weekday >= 0 && weekday <= 6 && is_part_of_day(from, to)) return {};
  return refuse("hours", "These are no hours of a day of the week.",
                "Choose a weekday, a start and a later end.");
}

Expected<void> check_adults(int adults) {
  if (adults >= 1 && adults <= 100) return {};
  return refuse("adults", "So many are not on duty.", "Say how many adults are, 1 to 100.");
}

/// Nothing is within any range.
Expected<void> check_range(const std::optional<int>& value, int least, int most, const char* where,
                           const char* what) {
  if (!value || (least <= *value && *value <= most)) return {};
  return refuse(
      where, what,
      "Give a number of " + std::to_string(least) + " to " + std::to_string(most) + ", or leave it out.");
}

Expected<void> check_span(Instant from, Instant to) {
  if (first_instant <= from && from < to && to <= last_instant) return {};
  return refuse("to", "This ends before it begins.", "Choose a later end.");
}

struct CheckDiary {
  Expected<void> operator()(const Hours& f) const {
    return check_weekly(f.weekday, f.from_minute, f.to_minute);
  }
  Expected<void> operator()(const Break& f) const {
    return check_weekly(f.weekday, f.from_minute, f.to_minute);
  }
  Expected<void> operator()(const WeekHours& f) const {
    return check_weekly(f.weekday, f.from_minute, f.to_minute).and_then([&] {
      return check_adults(f.adults);
    });
  }
  Expected<void> operator()(const OtherHours& f) const {
    if (f.last < f.first || f.first < first_day || last_day < f.last)
      return refuse("last", "The last day lies before the first.", "Choose a later one.");
    if (f.parts.size() > most_parts)
      return refuse("parts", "These are too many hours for one day.", "Enter fewer.");
    for (const DayPart& each : f.parts)
      if (!is_part_of_day(each.from_minute, each.to_minute))
        return refuse("parts", "These are no hours of a day.", "Choose a start and a later end.");
    return check_adults(f.adults);
  }
  Expected<void> operator()(const TakesOn& f) const {
    if (f.rest && !f.stretch)
      return refuse("stretch", "A break is missing what it ends.",
                    "Say how many minutes on end they take on, too.");
    return check_range(f.longest_day, 1, whole_day, "longest_day", "A day is not so long.")
        .and_then([&] { return check_range(f.stretch, 1, whole_day, "stretch", "A day is not so long."); })
        .and_then([&] { return check_range(f.rest, 0, whole_day, "rest", "A day is not so long."); });
  }
  Expected<void> operator()(const Lasts& f) const {
    return check_range(f.minutes, 1, whole_day, "minutes", "A one-on-one does not last so long.");
  }
  Expected<void> operator()(const DiaryRules& f) const {
    if (f.not_come.has_value() != f.not_come_days.has_value() ||
        f.not_come.has_value() != f.rest_days.has_value())
      return refuse("not_come", "The rule for whoever does not come is not whole.",
                    "Say how often, within how many days, and for how many days nothing is booked then; or "
                    "leave all three out.");
    return check_range(f.longest_wait, 1, 36500, "longest_wait", "Nobody waits so long.")
        .and_then(
            [&] { return check_range(f.hold_hours, 1, 2400, "hold_hours", "That is no time to hold."); })
        .and_then([&] { return check_range(f.not_come, 1, 100, "not_come", "That is no number of times."); })
        .and_then([&] { return check_range(f.not_come_days, 1, 3650, "not_come_days", "That is too long."); })
        .and_then([&] { return check_range(f.rest_days, 1, 3650, "rest_days", "That is too long."); });
  }
  Expected<void> operator()(const Upkeep& f) const { return check_span(f.from, f.to); }
  Expected<void> operator()(const Busy& f) const {
    if (auto fine = check_span(f.from, f.to); !fine) return fine;
    if (f.parts.size() > most_busy)
      return refuse("parts", "These are more busy times than can be kept.", "Save fewer months of it.");
    for (const BusyPart& each : f.parts)
      if (auto fine = check_span(each.from, each.to); !fine) return fine;
    return {};
  }
  Expected<void> operator()(const auto&) const { return {}; }
};

}  // namespace

Expected<void> check_diary(const ShopFact& fact) { return std::visit(CheckDiary{}, fact); }

}  // namespace wm::db
