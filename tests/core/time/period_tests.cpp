#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/time/period.h"
#include "core/time/text.h"
#include "core/time/zone.h"

using namespace wm;

namespace {

std::string ends(const char* from, PeriodUnit unit, int count) {
  return to_text(end(*parse_day(from), {unit, count}));
}

}  // namespace

TEST_CASE("months are added as the published examples have it", "[time]") {
  // The example of java.time.LocalDate.plusMonths' documentation.
  CHECK(ends("2007-03-31", PeriodUnit::months, 1) == "2007-04-30");
  // The same rule at the ends of other months, recomputed with java.time and PostgreSQL.
  CHECK(ends("2011-01-31", PeriodUnit::months, 1) == "2011-02-28");
  CHECK(ends("2012-01-31", PeriodUnit::months, 1) == "2012-02-29");
  CHECK(ends("2013-10-31", PeriodUnit::months, 4) == "2014-02-28");
  CHECK(ends("2012-02-29", PeriodUnit::months, 12) == "2013-02-28");
  CHECK(ends("2008-02-29", PeriodUnit::months, 12) == "2009-02-28");
  // PostgreSQL's date + interval: one month twice is not two months at once.
  CHECK(ends("2016-01-31", PeriodUnit::months, 1) == "2016-02-29");
  CHECK(ends("2016-02-29", PeriodUnit::months, 1) == "2016-03-29");
  CHECK(ends("2016-01-31", PeriodUnit::months, 2) == "2016-03-31");
  CHECK(ends("2024-02-29", PeriodUnit::months, 48) == "2028-02-29");
}

TEST_CASE("recency periods end on the day that the rules they come from say", "[time]") {
  // 14 CFR 61.57(a)(1), "within the preceding 90 days"; the day after the event is day 1.
  CHECK(ends("2026-01-01", PeriodUnit::days, 90) == "2026-04-01");
  CHECK(ends("2024-01-01", PeriodUnit::days, 90) == "2024-03-31");
  CHECK(ends("2026-02-01", PeriodUnit::days, 90) == "2026-05-02");
  // 14 CFR 61.56(c), "24th calendar month": done on any day of a month, good through the 24th month after it.
  CHECK(ends("2010-07-01", PeriodUnit::calendar_months, 24) == "2012-07-31");
  CHECK(ends("2024-02-29", PeriodUnit::calendar_months, 24) == "2026-02-28");
  CHECK(ends("2023-01-31", PeriodUnit::calendar_months, 24) == "2025-01-31");
  CHECK(ends("2003-03-01", PeriodUnit::calendar_months, 24) == "2005-03-31");
  // 29 CFR 1910.178(l)(4)(iii), "at least once every three years".
  CHECK(ends("2023-05-10", PeriodUnit::months, 36) == "2026-05-10");
  CHECK(ends("2024-02-29", PeriodUnit::months, 36) == "2027-02-28");
  // 29 CFR 1910.147(c)(6)(i), "at least annually".
  CHECK(ends("2025-03-10", PeriodUnit::months, 12) == "2026-03-10");
}

TEST_CASE("who is born on 29 February has a birthday on 1 March in common years", "[time]") {
  const Day born = *parse_day("2008-02-29");
  CHECK(to_text(birthday(born, 18)) == "2026-03-01");
  CHECK(to_text(birthday(born, 20)) == "2028-02-29");
  CHECK(to_text(birthday(*parse_day("1900-03-01"), 100)) == "2000-03-01");
  CHECK(to_text(birthday(*parse_day("2000-02-29"), 100)) == "2100-03-01");
}

TEST_CASE("a month counted on never leaves the month it reaches", "[time]") {
  const bool holds = rc::check("clamped to the month", [] {
    const Day from{*rc::gen::inRange(first_day.number, last_day.number - 36525)};
    const int months = *rc::gen::inRange(1, 1200);
    const CivilDate a = civil(from), b = civil(end(from, {PeriodUnit::months, months}));
    RC_ASSERT((b.year * 12 + b.month) - (a.year * 12 + a.month) == months);
    RC_ASSERT(b.day <= a.day);
    const Day last = end(from, {PeriodUnit::calendar_months, months});
    RC_ASSERT(civil(last).month == b.month && civil(last + 1).day == 1);
  });
  REQUIRE(holds);
}

TEST_CASE("what is good for a period covers to the end of its last day in the shop's zone", "[time]") {
  const Zone chicago = *Zone::named("America/Chicago");
  // 14 November 2024, 23:30 in Chicago, is the 15th in UTC: the shop's date counts.
  const Instant at = *parse_instant("2024-11-15T05:30:00Z");
  CHECK(to_text(cover_end(chicago, at, {PeriodUnit::days, 1})) == "2024-11-16T06:00:00Z");
  CHECK(to_text(cover_end(chicago, at, {PeriodUnit::months, 6})) == "2025-05-15T05:00:00Z");
}
