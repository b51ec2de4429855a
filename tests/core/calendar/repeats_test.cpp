// The examples of RFC 5545, 3.8.5.3, and what the RFC says of dates that months don't have.
#include <catch2/catch.hpp>

#include "core/calendar/busy.h"
#include "core/time/text.h"

namespace {

using namespace wm;

struct Example {
  const char* rule;   // further lines after a "|"
  const char* first;  // 09:00 in New York
  const char* days;   // "1997-09-02 1997-09-03", in order; "…" at the end: more follow
};

// From RFC 5545, 3.8.5.3, but for the last three, which follow from what it says: "if the computed local
// start time of a recurrence instance does not exist … the instance is ignored", as are days that a month
// does not have.
const Example examples[] = {
    {"FREQ=DAILY;COUNT=10", "1997-09-02",
     "1997-09-02 1997-09-03 1997-09-04 1997-09-05 1997-09-06 1997-09-07 1997-09-08 1997-09-09 1997-09-10 "
     "1997-09-11"},
    {"FREQ=DAILY;INTERVAL=10;COUNT=5", "1997-09-02",
     "1997-09-02 1997-09-12 1997-09-22 1997-10-02 1997-10-12"},
    {"FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH", "1997-09-02",
     "1997-09-02 1997-09-04 1997-09-16 1997-09-18 1997-09-30 1997-10-02 1997-10-14 1997-10-16"},
    {"FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH", "1997-09-02",
     "1997-09-02 1997-09-04 1997-09-09 1997-09-11 1997-09-16 1997-09-18 1997-09-23 1997-09-25 1997-09-30 "
     "1997-10-02"},
    {"FREQ=MONTHLY;COUNT=10;BYDAY=1FR", "1997-09-05",
     "1997-09-05 1997-10-03 1997-11-07 1997-12-05 1998-01-02 1998-02-06 1998-03-06 1998-04-03 1998-05-01 "
     "1998-06-05"},
    {"FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR", "1997-09-05",
     "1997-09-05 1997-10-03 1997-11-07 1997-12-05"},
    {"FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU", "1997-09-07",
     "1997-09-07 1997-09-28 1997-11-02 1997-11-30 1998-01-04 1998-01-25 1998-03-01 1998-03-29 1998-05-03 "
     "1998-05-31"},
    {"FREQ=MONTHLY;COUNT=6;BYDAY=-2MO", "1997-09-22",
     "1997-09-22 1997-10-20 1997-11-17 1997-12-22 1998-01-19 1998-02-16"},
    {"FREQ=MONTHLY;BYMONTHDAY=-3", "1997-09-28",
     "1997-09-28 1997-10-29 1997-11-28 1997-12-29 1998-01-29 1998-02-26 …"},
    {"FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15", "1997-09-02",
     "1997-09-02 1997-09-15 1997-10-02 1997-10-15 1997-11-02 1997-11-15 1997-12-02 1997-12-15 1998-01-02 "
     "1998-01-15"},
    {"FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1", "1997-09-30",
     "1997-09-30 1997-10-01 1997-10-31 1997-11-01 1997-11-30 1997-12-01 1997-12-31 1998-01-01 1998-01-31 "
     "1998-02-01"},
    {"FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15", "1997-09-10",
     "1997-09-10 1997-09-11 1997-09-12 1997-09-13 1997-09-14 1997-09-15 1999-03-10 1999-03-11 1999-03-12 "
     "1999-03-13"},
    {"FREQ=YEARLY;COUNT=10;BYMONTH=6,7", "1997-06-10",
     "1997-06-10 1997-07-10 1998-06-10 1998-07-10 1999-06-10 1999-07-10 2000-06-10 2000-07-10 2001-06-10 "
     "2001-07-10"},
    {"FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3", "1997-03-10",
     "1997-03-10 1999-01-10 1999-02-10 1999-03-10 2001-01-10 2001-02-10 2001-03-10 2003-01-10 2003-02-10 "
     "2003-03-10"},
    {"FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200", "1997-01-01",
     "1997-01-01 1997-04-10 1997-07-19 2000-01-01 2000-04-09 2000-07-18 2003-01-01 2003-04-10 2003-07-19 "
     "2006-01-01"},
    {"FREQ=YEARLY;BYDAY=20MO", "1997-05-19", "1997-05-19 1998-05-18 1999-05-17 …"},
    {"FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO", "1997-05-12", "1997-05-12 1998-05-11 1999-05-17 …"},
    {"FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13|EXDATE;TZID=America/New_York:19970902T090000", "1997-09-02",
     "1998-02-13 1998-03-13 1998-11-13 1999-08-13 2000-10-13 …"},
    {"FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13", "1997-09-13",
     "1997-09-13 1997-10-11 1997-11-08 1997-12-13 1998-01-10 1998-02-07 1998-03-07 …"},
    {"FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8", "1996-11-05",
     "1996-11-05 2000-11-07 2004-11-02 …"},
    {"FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", "1997-09-04", "1997-09-04 1997-10-07 1997-11-06"},
    {"FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2", "1997-09-29",
     "1997-09-29 1997-10-30 1997-11-27 1997-12-30 1998-01-29 1998-02-26 1998-03-30 …"},
    {"FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", "1997-08-05",
     "1997-08-05 1997-08-10 1997-08-19 1997-08-24"},
    {"FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", "1997-08-05",
     "1997-08-05 1997-08-17 1997-08-19 1997-08-31"},
    {"FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5", "2007-01-15",
     "2007-01-15 2007-01-30 2007-02-15 2007-03-15 2007-03-30"},
    {"FREQ=WEEKLY;COUNT=4|RDATE;TZID=America/New_York:19970907T090000|EXDATE;TZID=America/"
     "New_York:19970916T090000",
     "1997-09-02", "1997-09-02 1997-09-07 1997-09-09 1997-09-23"},
    {"FREQ=MONTHLY;COUNT=3", "2026-02-01", "2026-02-01 2026-03-01 2026-04-01"},
    {"FREQ=MONTHLY;BYMONTHDAY=31;COUNT=5", "2026-01-31",
     "2026-01-31 2026-03-31 2026-05-31 2026-07-31 2026-08-31"},
    {"FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29;COUNT=3", "2024-02-29", "2024-02-29 2028-02-29 2032-02-29"},
};

std::string without_dashes(std::string day) {
  std::erase(day, '-');
  return day;
}

std::string calendar_of(const Example& example) {
  std::string more = "RRULE:" + std::string(example.rule);
  for (std::size_t bar; (bar = more.find('|')) != std::string::npos;) more.replace(bar, 1, "\r\n");
  return "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:a\r\nDTSTART;TZID=America/New_York:" +
         without_dashes(example.first) + "T090000\r\nDURATION:PT1H\r\n" + more +
         "\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
}

const Zone new_york = Zone::named("America/New_York").value();

}  // namespace

TEST_CASE("Rules repeat as the examples of RFC 5545 do, at nine on the wall in summer and in winter") {
  for (const Example& example : examples) {
    const Instant first = new_york.start(parse_day(example.first).value());
    const auto busy =
        calendar::read_busy(calendar_of(example), Zone::utc(), {first, first + 86400LL * 366 * 12});
    INFO(example.rule);
    REQUIRE(busy);
    std::string expected = example.days;
    const bool more_follow = expected.ends_with(" …");
    if (more_follow) expected.resize(expected.size() - std::string(" …").size());
    std::string days;
    for (const Interval& each : *busy) {
      const LocalTime local = new_york.local(each.from);
      CHECK(local.hour == 9);
      CHECK(each.to.seconds - each.from.seconds == 3600);
      days += (days.empty() ? "" : " ") + to_text(local.day);
      if (more_follow && days.size() >= expected.size()) break;
    }
    CHECK(days == expected);
  }
}

TEST_CASE("Every day in January for three years, by either of the two rules of the RFC") {
  for (const char* rule : {"FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA",
                           "FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1"}) {
    const Instant first = new_york.start(parse_day("1998-01-01").value());
    const auto busy = calendar::read_busy(calendar_of({rule, "1998-01-01", ""}), Zone::utc(),
                                          {first, first + 86400LL * 2000});
    REQUIRE(busy);
    CHECK(busy->size() == 93);
    CHECK(to_text(new_york.day(busy->back().from)) == "2000-01-31");
  }
}

TEST_CASE("Rules by the hour and minute repeat as the RFC's do") {
  const auto times = [](const std::string& rule, const char* length) {
    const std::string text =
        "BEGIN:VCALENDAR\nBEGIN:VEVENT\nDTSTART;TZID=America/New_York:19970902T090000\nDURATION:" +
        std::string(length) + "\nRRULE:" + rule + "\nEND:VEVENT\nEND:VCALENDAR\n";
    const Instant first = parse_instant("1997-09-02T00:00:00Z").value();
    const auto busy = calendar::read_busy(text, Zone::utc(), {first, first + 86400 * 2});
    REQUIRE(busy);
    std::string out;
    for (const Interval& each : *busy) {
      const LocalTime local = new_york.local(each.from);
      out += std::to_string(local.hour) + ":" + std::to_string(local.minute) + " ";
    }
    return out;
  };
  CHECK(times("FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T210000Z", "PT5M") == "9:0 12:0 15:0 ");
  CHECK(times("FREQ=MINUTELY;INTERVAL=15;COUNT=6", "PT5M") == "9:0 9:15 9:30 9:45 10:0 10:15 ");
  CHECK(times("FREQ=MINUTELY;INTERVAL=90;COUNT=4", "PT5M") == "9:0 10:30 12:0 13:30 ");
  const std::string twenty = times("FREQ=DAILY;BYHOUR=9,10,11,12,13,14,15,16;BYMINUTE=0,20,40", "PT5M");
  CHECK(twenty.starts_with("9:0 9:20 9:40 10:0 "));
  CHECK(twenty == times("FREQ=MINUTELY;INTERVAL=20;BYHOUR=9,10,11,12,13,14,15,16", "PT5M"));
}
