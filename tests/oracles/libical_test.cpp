// Ends of periods against libical: days by its own arithmetic, months by recurrence rules of RFC 5545, which
// know of no "month later" but of days of months and of the last one that there is.
#include <libical/ical.h>
#include <catch2/catch.hpp>

#include <random>

#include "core/time/period.h"
#include "core/time/text.h"

using namespace wm;

namespace {

icaltimetype ical(Day d) {
  const CivilDate c = civil(d);
  icaltimetype t = icaltime_null_date();
  t.year = c.year;
  t.month = c.month;
  t.day = c.day;
  t.is_date = 1;
  return t;
}
std::string text(const icaltimetype& t) { return to_text(day_of({t.year, t.month, t.day})); }

/// The rule's second date; the first is `from`, which has to be one of its dates (RFC 5545, 3.8.5.3).
std::string second(const icaltimetype& from, const std::string& rule) {
  icalrecur_iterator* dates = icalrecur_iterator_new(icalrecurrencetype_from_string(rule.c_str()), from);
  REQUIRE(dates != nullptr);
  icalrecur_iterator_next(dates);
  const icaltimetype found = icalrecur_iterator_next(dates);
  icalrecur_iterator_free(dates);
  return icaltime_is_null_time(found) ? "none" : text(found);
}

std::string days_on(Day from, int count) {
  icaltimetype t = ical(from);
  icaltime_adjust(&t, count, 0, 0, 0);
  return text(t);
}
/// The last of those days of the month, up to from's own, that the month has.
std::string months_on(Day from, int count) {
  const int day = civil(from).day;
  std::string days = std::to_string(day);
  for (int d = 28; d < day; ++d) days += "," + std::to_string(d);
  return second(ical(from), "FREQ=MONTHLY;INTERVAL=" + std::to_string(count) + ";BYMONTHDAY=" + days +
                                (day > 28 ? ";BYSETPOS=-1" : ""));
}
std::string month_ends_on(Day from, int count) {
  icaltimetype last = ical(from);
  last.day = icaltime_days_in_month(last.month, last.year);
  return second(last, "FREQ=MONTHLY;INTERVAL=" + std::to_string(count) + ";BYMONTHDAY=-1");
}

struct Compared {
  int days = 0, months = 0;
};

void compare(Day from, int count, Compared& compared) {
  INFO(to_text(from) << " and " << count);
  REQUIRE(to_text(end(from, {PeriodUnit::days, count})) == days_on(from, count));
  ++compared.days;
  const Day reached = end(from, {PeriodUnit::calendar_months, count});
  // libical's recurrence rules stop at the year 2582.
  if (civil(reached).year > 2581) return;
  REQUIRE(to_text(reached) == month_ends_on(from, count));
  ++compared.months;
  // A rule that starts on the first of a month is given that day twice by libical 3.0.16.
  if (civil(from).day == 1) return;
  REQUIRE(to_text(end(from, {PeriodUnit::months, count})) == months_on(from, count));
  ++compared.months;
}

}  // namespace

TEST_CASE("ends of periods are libical's, for all days of some years and random ones", "[libical]") {
  Compared compared;
  for (const int year : {1900, 1999, 2000, 2024, 2026, 2100}) {
    for (Day d = day_of({year, 1, 1}); d < day_of({year + 1, 1, 1}); d = d + 1)
      for (const int n : {1, 2, 6, 11, 12, 13, 24, 36, 90}) compare(d, n, compared);
  }
  std::mt19937 random(20261125);
  std::uniform_int_distribution<std::int32_t> days(first_day.number, last_day.number - 36525);
  for (int i = 0; i < 5000; ++i) compare(Day{days(random)}, 1 + static_cast<int>(random() % 1200), compared);
  WARN(compared.days << " ends of days and " << compared.months << " ends of months compared with libical");
}
