// Busy times out of calendars as people bring them, and out of what nobody should bring.
#include "core/calendar/busy.h"

#include <catch2/catch.hpp>

#include "core/time/text.h"

namespace {

using namespace wm;

const Zone berlin = Zone::named("Europe/Berlin").value();
const Interval spring{parse_instant("2026-03-01T00:00:00Z").value(),
                      parse_instant("2026-05-01T00:00:00Z").value()};

std::string event(const std::string& lines) {
  return "BEGIN:VCALENDAR\nVERSION:2.0\nBEGIN:VEVENT\n" + lines + "\nEND:VEVENT\nEND:VCALENDAR\n";
}

std::string shown(const std::vector<Interval>& busy) {
  std::string out;
  for (const Interval& each : busy) out += to_text(each.from) + "/" + to_text(each.to) + " ";
  return out;
}

std::string busy(const std::string& text, const Zone& shop = berlin) {
  const auto found = calendar::read_busy(text, shop, spring);
  if (!found) return found.error().front().where + ": " + found.error().front().what;
  return shown(*found);
}

std::vector<Problem> refused(const std::string& text) {
  const auto found = calendar::read_busy(text, berlin, spring);
  REQUIRE_FALSE(found);
  return found.error();
}

}  // namespace

TEST_CASE("The RFC's first event lasts eleven hours") {
  // RFC 5545, 3.4.
  const std::string text =
      "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//hacksw/handcal//NONSGML v1.0//EN\r\nBEGIN:VEVENT\r\n"
      "UID:19970610T172345Z-AF23B2@example.com\r\nDTSTAMP:19970610T172345Z\r\nDTSTART:19970714T170000Z\r\n"
      "DTEND:19970715T040000Z\r\nSUMMARY:Bastille Day Party\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
  const Instant july = parse_instant("1997-07-01T00:00:00Z").value();
  CHECK(shown(calendar::read_busy(text, berlin, {july, july + 86400 * 31}).value()) ==
        "1997-07-14T17:00:00Z/1997-07-15T04:00:00Z ");
}

TEST_CASE("Times are in their own zone, in UTC, or the shop's") {
  CHECK(busy(event("DTSTART;TZID=America/New_York:20260302T090000\nDURATION:PT1H")) ==
        "2026-03-02T14:00:00Z/2026-03-02T15:00:00Z ");
  CHECK(busy(event("DTSTART:20260302T090000Z\nDURATION:PT1H")) ==
        "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z ");
  CHECK(busy(event("DTSTART:20260302T090000\nDURATION:PT1H")) ==
        "2026-03-02T08:00:00Z/2026-03-02T09:00:00Z ");
}

TEST_CASE("Whole days are the shop's, the end left out, with an hour less where clocks go forward") {
  CHECK(busy(event("DTSTART;VALUE=DATE:20260328\nDTEND;VALUE=DATE:20260330")) ==
        "2026-03-27T23:00:00Z/2026-03-29T22:00:00Z ");
  CHECK(busy(event("DTSTART;VALUE=DATE:20260328")) == "2026-03-27T23:00:00Z/2026-03-28T23:00:00Z ");
}

TEST_CASE("A day's length keeps the time on the wall, hours keep their number") {
  CHECK(busy(event("DTSTART;TZID=Europe/Berlin:20260328T120000\nDURATION:P1D")) ==
        "2026-03-28T11:00:00Z/2026-03-29T10:00:00Z ");
  CHECK(busy(event("DTSTART;TZID=Europe/Berlin:20260328T120000\nDURATION:PT24H")) ==
        "2026-03-28T11:00:00Z/2026-03-29T11:00:00Z ");
}

TEST_CASE("What is cancelled, transparent, free or without a length is not busy") {
  CHECK(busy(event("DTSTART:20260302T090000Z\nDURATION:PT1H\nSTATUS:CANCELLED")).empty());
  CHECK(busy(event("DTSTART:20260302T090000Z\nDURATION:PT1H\nTRANSP:TRANSPARENT")).empty());
  CHECK(busy(event("DTSTART:20260302T090000Z")).empty());
  CHECK(busy("BEGIN:VCALENDAR\nBEGIN:VFREEBUSY\nFREEBUSY;FBTYPE=FREE:20260302T090000Z/PT1H\nEND:VFREEBUSY\n"
             "END:VCALENDAR\n")
            .empty());
}

TEST_CASE("Free/busy periods are busy, by their end or by their length") {
  CHECK(busy("BEGIN:VCALENDAR\nBEGIN:VFREEBUSY\nFREEBUSY:20260302T090000Z/PT1H,20260303T090000Z/"
             "20260303T093000Z\n"
             "END:VFREEBUSY\nEND:VCALENDAR\n") ==
        "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z 2026-03-03T09:00:00Z/2026-03-03T09:30:00Z ");
}

TEST_CASE("One of a series that was moved is busy where it went, and one that was called off not at all") {
  const std::string series =
      "BEGIN:VCALENDAR\nBEGIN:VEVENT\nUID:s\nDTSTART;TZID=Europe/Berlin:20260302T090000\nDURATION:PT1H\n"
      "RRULE:FREQ=WEEKLY;COUNT=3\nEND:VEVENT\n";
  const auto with = [&](const std::string& lines) {
    return busy(series + "BEGIN:VEVENT\nUID:s\n" + lines + "\nEND:VEVENT\nEND:VCALENDAR\n");
  };
  CHECK(with("RECURRENCE-ID;TZID=Europe/Berlin:20260309T090000\nDTSTART:20260310T150000Z\nDURATION:PT2H") ==
        "2026-03-02T08:00:00Z/2026-03-02T09:00:00Z 2026-03-10T15:00:00Z/2026-03-10T17:00:00Z "
        "2026-03-16T08:00:00Z/2026-03-16T09:00:00Z ");
  CHECK(with("RECURRENCE-ID:20260309T080000Z\nDTSTART:20260309T080000Z\nDURATION:PT1H\nSTATUS:CANCELLED") ==
        "2026-03-02T08:00:00Z/2026-03-02T09:00:00Z 2026-03-16T08:00:00Z/2026-03-16T09:00:00Z ");
}

TEST_CASE("One of a series that lasts longer, and one left out by its day alone") {
  const std::string series =
      "BEGIN:VCALENDAR\nBEGIN:VEVENT\nUID:s\nDTSTART:20260302T090000Z\nDURATION:PT1H\nRRULE:FREQ=WEEKLY;"
      "COUNT=3\n"
      "EXDATE;VALUE=DATE:20260316\nEND:VEVENT\nBEGIN:VEVENT\nUID:s\nRECURRENCE-ID:20260309T090000Z\n"
      "DTSTART:20260309T090000Z\nDURATION:PT3H\nEND:VEVENT\nEND:VCALENDAR\n";
  CHECK(busy(series) ==
        "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z 2026-03-09T09:00:00Z/2026-03-09T12:00:00Z ");
}

TEST_CASE("Whole days that repeat are whole days, on the one with 23 hours too") {
  CHECK(busy(event("DTSTART;VALUE=DATE:20260322\nDTEND;VALUE=DATE:20260323\nRRULE:FREQ=WEEKLY;COUNT=2")) ==
        "2026-03-21T23:00:00Z/2026-03-22T23:00:00Z 2026-03-28T23:00:00Z/2026-03-29T22:00:00Z ");
}

TEST_CASE("A rule by the hour comes to its days of the week however far apart its times are") {
  CHECK(busy(event(
            "DTSTART:20260302T090000Z\nDURATION:PT1H\nRRULE:FREQ=HOURLY;INTERVAL=168;BYDAY=MO;COUNT=2")) ==
        "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z 2026-03-09T09:00:00Z/2026-03-09T10:00:00Z ");
}

TEST_CASE("A mark at the file's beginning that says it is UTF-8 is passed over") {
  CHECK(busy("\xEF\xBB\xBF" + event("DTSTART:20260302T090000Z\nDURATION:PT1H")) ==
        "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z ");
}

TEST_CASE("Folded lines are one, blanks and tabs alike, with either end of line") {
  CHECK(busy("BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART;TZID=Euro\r\n "
             "pe/Berlin:20260302T0\r\n\t90000\r\nDURATION:PT1H\r\n"
             "END:VEVENT\r\nEND:VCALENDAR\r\n") == "2026-03-02T08:00:00Z/2026-03-02T09:00:00Z ");
}

TEST_CASE("Stretches that touch are one, and only what overlaps the time asked about is told") {
  CHECK(busy(event("DTSTART:20260302T090000Z\nDURATION:PT1H\nRRULE:FREQ=HOURLY;COUNT=3")) ==
        "2026-03-02T09:00:00Z/2026-03-02T12:00:00Z ");
  CHECK(busy(event("DTSTART:20200101T000000Z\nDURATION:PT1H")).empty());
  CHECK(busy(event("DTSTART:20260228T233000Z\nDURATION:PT1H")) ==
        "2026-02-28T23:30:00Z/2026-03-01T00:30:00Z ");
}

TEST_CASE("A time in the hour that clocks leave out is the moment of the jump") {
  CHECK(busy(event("DTSTART;TZID=Europe/Berlin:20260329T023000\nDURATION:PT1H")) ==
        "2026-03-29T01:00:00Z/2026-03-29T02:00:00Z ");
}

TEST_CASE("What is wrong is told with its line, all of it") {
  const std::vector<Problem> problems =
      refused(event("DTSTART;TZID=Mars/"
                    "Base:20260302T090000\nDURATION:soon\nRRULE:FREQ=SOMETIMES\nDTSTART:20260302T090000Z"));
  REQUIRE(problems.size() >= 3);
  CHECK(problems[0].where == "line 4");
  CHECK(problems[0].what == "The time zone \"Mars/Base\" is unknown, and this calendar does not define it.");
  CHECK(problems[1].where == "line 5");
  CHECK(problems[2].where == "line 7");
  for (const Problem& each : problems) CHECK_FALSE(each.remedy.empty());
}

TEST_CASE("Hostile calendars are refused in a sentence") {
  const std::string daily = "DTSTART:20260302T090000Z\nDURATION:PT1H\nRRULE:";
  std::string deep, many = "BEGIN:VCALENDAR\n";
  for (int i = 0; i < 100'000; ++i) deep += "BEGIN:VCALENDAR\n";
  for (int i = 0; i < 20'001; ++i) many += "BEGIN:VEVENT\nDTSTART:20260302T090000Z\nEND:VEVENT\n";
  CHECK(refused(deep).front().what == "Parts of this calendar lie more than 6 deep in one another.");
  CHECK(refused(many + "END:VCALENDAR\n").front().what == "This calendar has more than 20,000 events.");
  CHECK(refused(std::string(8'000'001, 'A')).front().what == "This calendar has more than 8,000,000 bytes.");
  CHECK(refused("").front().what == "There is no calendar in this file.");
  CHECK(refused("BEGIN:VCALENDAR\nBEGIN:VEVENT\n").front().what == "This \"VCALENDAR\" is not closed.");
  CHECK(refused("BEGIN:VCALENDAR\nX:" + std::string(17'000, 'a') + "\nEND:VCALENDAR\n").front().what ==
        "This line has more than 16,000 bytes.");
  CHECK(refused("BEGIN:VCALENDAR\nX:caf\xE9\nEND:VCALENDAR\n").front().what ==
        "Some of this line is not UTF-8.");
  CHECK(refused("BEGIN:VCALENDAR\nX:a\x01\nEND:VCALENDAR\n").front().what ==
        "There is a character here that no calendar may have.");
  CHECK(refused(event("DTSTART:20260302T090000Z\nDURATION:P4294967297D")).front().where == "line 5");
  const std::string six = "BEGIN:A\nBEGIN:A\nBEGIN:A\nBEGIN:A\nBEGIN:A\n",
                    end = "END:A\nEND:A\nEND:A\nEND:A\nEND:A\n";
  CHECK(busy("BEGIN:VCALENDAR\n" + six + end + "END:VCALENDAR\n").empty());
  CHECK(refused("BEGIN:VCALENDAR\n" + six + "BEGIN:A\nEND:A\n" + end + "END:VCALENDAR\n").front().where ==
        "line 7");
  CHECK(refused(event("DTSTART:20260302T090000Z\nDTEND:20260301T090000Z")).front().what ==
        "This event ends before it begins.");
  CHECK(refused(event("DTSTART:19000101T000000Z\nDURATION:PT1H\nRRULE:FREQ=MINUTELY")).front().where ==
        "line 6");
  CHECK(refused(event(daily + "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")).front().where == "line 6");
  CHECK(refused(event(daily + "FREQ=SECONDLY")).front().where == "line 6");
  CHECK(refused(event(daily + "FREQ=MINUTELY;BYMONTH=2;BYMONTHDAY=30")).front().where == "line 6");
  CHECK(refused(event("DTSTART:99990101T000000Z")).front().where == "line 4");
  CHECK(refused(event("DTSTART:20260230T000000Z")).front().where == "line 4");
  // These have an answer: nothing repeats, or much later than is asked about.
  const std::string once = "2026-03-02T09:00:00Z/2026-03-02T10:00:00Z ";
  for (const char* rule : {"FREQ=MINUTELY;INTERVAL=2;BYMINUTE=1", "FREQ=HOURLY;INTERVAL=24;BYHOUR=10",
                           "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30", "FREQ=MONTHLY;BYMONTH=2;BYMONTHDAY=31"})
    CHECK(busy(event(daily + rule)) == once);
  // Each takes libical a good while to find that out, so that many of them would take hours.
  const auto in_vain = [](int events) {
    std::string out = "BEGIN:VCALENDAR\n";
    for (int i = 0; i < events; ++i)
      out +=
          "BEGIN:VEVENT\nDTSTART:20260302T090000Z\nDURATION:PT1H\nRRULE:FREQ=MONTHLY;BYMONTH=2;BYMONTHDAY="
          "31\nEND:VEVENT\n";
    return out + "END:VCALENDAR\n";
  };
  CHECK(busy(in_vain(10)) == once);
  CHECK(refused(in_vain(11)).front().what ==
        "What repeats in this calendar does so more than 200,000 times, or has too many rules that never "
        "come to "
        "a time.");
}
