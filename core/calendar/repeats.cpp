#include "core/calendar/repeats.h"

#include <algorithm>
#include <iterator>
#include <memory>
#include <utility>

#include "core/calendar/ical.h"
#include "core/time/period.h"

namespace wm::calendar {
namespace {

template <std::size_t n>
std::size_t count(const short (&values)[n]) {
  return static_cast<std::size_t>(std::find(values, values + n, ICAL_RECURRENCE_ARRAY_MAX) - values);
}

icaltimetype wall(const Moment& moment) {
  const CivilDate date = civil(moment.local.day);
  icaltimetype t = icaltime_null_time();
  t.year = date.year;
  t.month = date.month;
  t.day = date.day;
  t.hour = moment.local.hour;
  t.minute = moment.local.minute;
  t.second = moment.local.second;
  t.is_date = moment.is_date;
  return t;
}

Moment moment_of(const icaltimetype& t, const Moment& like) {
  return {{day_of({t.year, t.month, t.day}), t.hour, t.minute, t.second}, like.is_date, like.zone};
}

bool less_than_a_day(const icalrecurrencetype& rule) {
  return rule.freq == ICAL_HOURLY_RECURRENCE || rule.freq == ICAL_MINUTELY_RECURRENCE;
}

template <std::size_t n>
bool has(const short (&values)[n], int value) {
  const std::size_t size = count(values);
  return size == 0 || std::find(values, values + size, value) != values + size;
}

/// Whether a rule by the hour or minute ever comes to what it asks for: hours, minutes and days of the week
/// come again after a week at most.
bool ever_comes(const icalrecurrencetype& rule, const Moment& first) {
  const int step = rule.interval * (rule.freq == ICAL_HOURLY_RECURRENCE ? 60 : 1);
  std::int64_t minutes = first.local.hour * 60 + first.local.minute;
  for (int i = 0; i < 7 * 24 * 60; ++i, minutes += step) {
    const int weekday = static_cast<int>(((first.local.day.number + minutes / 1440 + 4) % 7 + 7) % 7) + 1;
    if (has(rule.by_day, weekday) && has(rule.by_hour, static_cast<int>(minutes / 60 % 24)) &&
        (rule.freq == ICAL_HOURLY_RECURRENCE || has(rule.by_minute, static_cast<int>(minutes % 60))))
      return true;
  }
  return false;
}

/// What would keep libical searching for longer than anybody waits.
const char* too_laborious(const icalrecurrencetype& rule) {
  if (rule.interval < 1) return "does not say how often it repeats";
  if (rule.rscale != nullptr || rule.skip != ICAL_SKIP_OMIT) return "repeats by another calendar";
  if (rule.freq == ICAL_SECONDLY_RECURRENCE) return "repeats by the second";
  const bool by_dates = count(rule.by_month) + count(rule.by_month_day) + count(rule.by_year_day) +
                            count(rule.by_week_no) + count(rule.by_set_pos) >
                        0;
  if (less_than_a_day(rule) && by_dates) return "repeats by the hour or minute on some dates only";
  const std::size_t a_day = std::max<std::size_t>(1, count(rule.by_hour)) *
                            std::max<std::size_t>(1, count(rule.by_minute)) *
                            std::max<std::size_t>(1, count(rule.by_second));
  if (a_day > (count(rule.by_set_pos) > 0 ? 12 : 300)) return "repeats too often within a day";
  return nullptr;
}

/// The end of a rule in the zone's own terms. A day holds through its end.
bool past(const icaltimetype& until, const Moment& time) {
  if (icaltime_is_null_time(until)) return false;
  const Moment end = moment_of(until, time);
  if (until.is_date) return end.local.day < time.local.day;
  return icaltime_is_utc(until) ? Zone::utc().instant(end.local) < time.instant() : end.local < time.local;
}

/// What is followed, and for how long at most.
struct Task {
  const Moment& first;
  bool of_clocks = false;
  Instant before;
  std::size_t& left;
  const char *too_many, *remedy;
};

constexpr int last_searched = 2582;  // year; libical looks no further

/// How much of what is left one step takes: libical takes as long for a year without a time as for one with
/// several. A zone's rules go on for centuries; an event's that comes to nothing more is a mistake, or meant
/// to keep a reader searching.
std::size_t cost(const Task& task, int year, int next) {
  constexpr std::size_t in_vain = 20'000;
  if (next == last_searched && !task.of_clocks) return in_vain;
  return static_cast<std::size_t>(std::max(1, next - year));
}

std::optional<std::vector<Moment>> follow(const ContentLine& line, const Task& task, Mistakes& mistakes) {
  const Moment& first = task.first;
  const Parsed parsed(line, mistakes);
  if (parsed.properties().empty()) return std::nullopt;
  icalrecurrencetype rule = icalproperty_get_rrule(parsed.properties().front());
  const char* why = too_laborious(rule);
  if (why == nullptr && task.of_clocks && rule.freq != ICAL_YEARLY_RECURRENCE)
    why = "repeats more often than by the year";
  if (why != nullptr) {
    mistakes.add(line.number, quoted(line.text) + ": this " + why + ".",
                 task.of_clocks ? "Write it as a rule by the year, or name the days as RDATE."
                                : "Write it as a rule by the day, week, month or year.");
    return std::nullopt;
  }
  const auto too_many = [&]() -> std::optional<std::vector<Moment>> {
    mistakes.add(line.number, task.too_many, task.remedy);
    task.left = 0;
    return std::nullopt;
  };
  if (task.left == 0) return too_many();
  std::vector<Moment> out;
  if (!task.of_clocks) out.push_back(first);
  if (rule.count == static_cast<int>(out.size()) && rule.count > 0) return out;
  if (less_than_a_day(rule) && !ever_comes(rule, first)) return out;
  const icaltimetype until = rule.until;
  rule.until = icaltime_null_time();
  const int most = std::exchange(rule.count, 0);
  const std::unique_ptr<icalrecur_iterator, Free> times(icalrecur_iterator_new(rule, wall(first)));
  int year = civil(first.local.day).year;
  if (!times) {
    // libical has found out by searching through to the end.
    task.left -= std::min(task.left, cost(task, year, last_searched));
    mistakes.add(line.number, quoted(line.text) + " is no rule that can be followed.",
                 "Write it as RFC 5545 has it.");
    return std::nullopt;
  }
  // Counted here, since the first is one of them whether the rule has it or not, and libical may give it
  // twice.
  while (most == 0 || out.size() < static_cast<std::size_t>(most)) {
    const icaltimetype t = icalrecur_iterator_next(times.get());
    const bool at_end = icaltime_is_null_time(t) || t.year > 2999;
    const int next = at_end ? last_searched : t.year;
    const std::size_t step = cost(task, std::exchange(year, next), next);
    const Moment time = at_end ? first : moment_of(t, first);
    const bool done = at_end || time.instant() >= task.before || past(until, time);
    if (done && !at_end && !task.of_clocks) return out;
    if (step > task.left) return too_many();
    task.left -= step;
    if (done) return out;
    if (out.empty() || out.back().local < time.local) out.push_back(time);
  }
  return out;
}

}  // namespace

std::optional<std::vector<Moment>> repeats(const ContentLine& rule, const Moment& first, Instant before,
                                           std::size_t& left, Mistakes& mistakes) {
  return follow(
      rule,
      {first, false, before, left,
       "What repeats in this calendar does so more than 200,000 times, or has too many rules that never "
       "come to a time.",
       "Give the rule an end (UNTIL), or a later beginning."},
      mistakes);
}

std::optional<std::vector<Moment>> changes_by_rule(const ContentLine& rule, const Moment& first,
                                                   Instant before, std::size_t& left, Mistakes& mistakes) {
  return follow(
      rule,
      {first, true, before, left,
       "The rules of time zones go on for longer than is followed: 10,000 years in a zone, 60,000 in a "
       "calendar.",
       "Save the calendar with times in UTC."},
      mistakes);
}

}  // namespace wm::calendar
