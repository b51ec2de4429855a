// Zones as calendars define them, by names of their own.
#include "core/calendar/zones.h"

#include <catch2/catch.hpp>
#include <random>
#include <set>

#include "core/calendar/busy.h"
#include "core/time/text.h"

namespace {

using namespace wm;

const Zone shop_zone = Zone::named("Europe/Berlin").value();
const Interval year_2026{parse_instant("2026-01-01T00:00:00Z").value(),
                         parse_instant("2027-01-01T00:00:00Z").value()};

std::string with_zone(const std::string& zone, const std::string& events) {
  return "BEGIN:VCALENDAR\n" + zone + events + "END:VCALENDAR\n";
}

std::string part(const std::string& kind, const std::string& start, const std::string& from,
                 const std::string& to, const std::string& more = {}) {
  return "BEGIN:" + kind + "\nDTSTART:" + start + "\nTZOFFSETFROM:" + from + "\nTZOFFSETTO:" + to + "\n" +
         more + "END:" + kind + "\n";
}

std::string zone(const std::string& name, const std::string& parts) {
  return "BEGIN:VTIMEZONE\nTZID:" + name + "\n" + parts + "END:VTIMEZONE\n";
}

std::string meeting(const std::string& tzid, const std::string& from, const std::string& more = {}) {
  return "BEGIN:VEVENT\nDTSTART;TZID=" + tzid + ":" + from + "\nDURATION:PT1H\n" + more + "END:VEVENT\n";
}

std::string told(const std::string& text, const Interval& within = year_2026) {
  const auto found = calendar::read_busy(text, shop_zone, within);
  if (!found) return found.error().front().where + ": " + found.error().front().what;
  std::string out;
  for (const Interval& each : *found) out += (out.empty() ? "" : " ") + to_text(each.from);
  return out;
}

/// As New York has it since 2007, by days of the year 1601 that its rules do not have.
const std::string since_1601 = zone(
    "Office",
    part("STANDARD", "16010101T020000", "-0400", "-0500", "RRULE:FREQ=YEARLY;BYDAY=1SU;BYMONTH=11\n") +
        part("DAYLIGHT", "16010101T020000", "-0500", "-0400", "RRULE:FREQ=YEARLY;BYDAY=2SU;BYMONTH=3\n"));

/// RFC 5545, 3.6.5, the first example, under another name.
const std::string published =
    zone("Head office",
         "LAST-MODIFIED:20050809T050000Z\n" +
             part("DAYLIGHT", "19670430T020000", "-0500", "-0400",
                  "RRULE:FREQ=YEARLY;BYMONTH=4;BYDAY=-1SU;UNTIL=19730429T070000Z\nTZNAME:EDT\n") +
             part("STANDARD", "19671029T020000", "-0400", "-0500",
                  "RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU;UNTIL=20061029T060000Z\nTZNAME:EST\n") +
             part("DAYLIGHT", "19740106T020000", "-0500", "-0400", "RDATE:19750223T020000\nTZNAME:EDT\n") +
             part("DAYLIGHT", "19760425T020000", "-0500", "-0400",
                  "RRULE:FREQ=YEARLY;BYMONTH=4;BYDAY=-1SU;UNTIL=19860427T070000Z\nTZNAME:EDT\n") +
             part("DAYLIGHT", "19870405T020000", "-0500", "-0400",
                  "RRULE:FREQ=YEARLY;BYMONTH=4;BYDAY=1SU;UNTIL=20060402T070000Z\nTZNAME:EDT\n") +
             part("DAYLIGHT", "20070311T020000", "-0500", "-0400",
                  "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU\nTZNAME:EDT\n") +
             part("STANDARD", "20071104T020000", "-0400", "-0500",
                  "RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU\nTZNAME:EST\n"));

}  // namespace

TEST_CASE("The RFC's New York under a name of its own has New York's times from 1967 on") {
  const Zone new_york = Zone::named("America/New_York").value();
  std::mt19937 random(7);
  for (int year = 1967; year <= 2030; ++year) {
    const Day first = day_of({year, year == 1967 ? 5 : 1, 1});
    std::string events;
    std::set<Instant> expected;
    for (int i = 0; i < 200; ++i) {
      // Every third lies in the months and hours in which clocks change.
      LocalTime t{first + static_cast<int>(random() % 240), static_cast<int>(random() % 24),
                  static_cast<int>(random() % 60)};
      if (i % 3 == 0) t.hour = static_cast<int>(random() % 4);
      if (i % 6 == 0)
        t.day =
            day_of({year, year == 1967 || random() % 2 == 0 ? 10 : 4, 20}) + static_cast<int>(random() % 18);
      const CivilDate date = civil(t.day);
      char text[32];
      std::snprintf(text, sizeof text, "%04d%02d%02dT%02d%02d%02d", date.year, static_cast<int>(date.month),
                    static_cast<int>(date.day), t.hour, t.minute, t.second);
      events +=
          "BEGIN:VEVENT\nDTSTART;TZID=Head office:" + std::string(text) + "\nDURATION:PT1S\nEND:VEVENT\n";
      expected.insert(new_york.instant(t));
    }
    std::string all;
    for (const Instant& each : expected) all += (all.empty() ? "" : " ") + to_text(each);
    const Instant begins = new_york.start(first);
    REQUIRE(told(with_zone(published, events), {begins, begins + 400 * 86400}) == all);
  }
}

TEST_CASE("A zone that begins in the year 1601, before or after the events, quoted or not") {
  const std::string both = meeting("Office", "20260301T090000") + meeting("\"Office\"", "20260701T090000");
  CHECK(told(with_zone(since_1601, both)) == "2026-03-01T14:00:00Z 2026-07-01T13:00:00Z");
  CHECK(told(with_zone("", both + since_1601)) == "2026-03-01T14:00:00Z 2026-07-01T13:00:00Z");
  // Far years too: the rules have no end.
  const Instant far = parse_instant("2400-06-01T00:00:00Z").value();
  CHECK(told(with_zone(since_1601, meeting("Office", "24000701T090000")), {far, far + 86400 * 60}) ==
        "2400-07-01T13:00:00Z");
}

TEST_CASE("A zone whose first day is not one that its rule has changes its clocks by the rule alone") {
  const std::string unlike = zone(
      "Office",
      part("STANDARD", "20260101T000000", "-0400", "-0500", "RRULE:FREQ=YEARLY;BYDAY=1SU;BYMONTH=11\n") +
          part("DAYLIGHT", "20260101T000000", "-0500", "-0400", "RRULE:FREQ=YEARLY;BYDAY=2SU;BYMONTH=3\n"));
  CHECK(
      told(with_zone(unlike, meeting("Office", "20260201T090000") + meeting("Office", "20260401T090000"))) ==
      "2026-02-01T14:00:00Z 2026-04-01T13:00:00Z");
}

TEST_CASE("Clocks that never change, by seconds too; before its first change a zone is as it says it was") {
  const std::string fixed = zone("Bureau", part("STANDARD", "19700101T000000", "+0545", "+0545"));
  CHECK(told(with_zone(fixed, meeting("Bureau", "20260302T090000"))) == "2026-03-02T03:15:00Z");
  const std::string ever = zone("Ever", part("STANDARD", "00010101T000000", "-0330", "-0330"));
  CHECK(told(with_zone(ever, meeting("Ever", "20260302T090000"))) == "2026-03-02T12:30:00Z");
  const std::string later = zone("Old", part("STANDARD", "20260601T000000", "-045602", "-0500"));
  CHECK(told(with_zone(later, meeting("Old", "20260302T090000") + meeting("Old", "20260702T090000"))) ==
        "2026-03-02T13:56:02Z 2026-07-02T14:00:00Z");
}

TEST_CASE("A time that a calendar's own zone leaves out is the jump, one that comes twice the first") {
  const auto at = [](const std::string& local) {
    return told(with_zone(since_1601, meeting("Office", local)));
  };
  CHECK(at("20260308T015959") == "2026-03-08T06:59:59Z");
  CHECK(at("20260308T020000") == "2026-03-08T07:00:00Z");
  CHECK(at("20260308T023000") == "2026-03-08T07:00:00Z");
  CHECK(at("20260308T030000") == "2026-03-08T07:00:00Z");
  CHECK(at("20260308T030001") == "2026-03-08T07:00:01Z");
  CHECK(at("20261101T010000") == "2026-11-01T05:00:00Z");
  CHECK(at("20261101T013000") == "2026-11-01T05:30:00Z");
  CHECK(at("20261101T020000") == "2026-11-01T07:00:00Z");
}

TEST_CASE("Series, their ends, what is left out and what was moved go by the calendar's own zone") {
  const std::string series = meeting("Office", "20260301T090000",
                                     "UID:s\nRRULE:FREQ=WEEKLY;UNTIL=20260322T130000Z\n"
                                     "EXDATE;TZID=Office:20260315T090000\n");
  CHECK(told(with_zone(since_1601, series)) ==
        "2026-03-01T14:00:00Z 2026-03-08T13:00:00Z 2026-03-22T13:00:00Z");
  const std::string moved =
      meeting("Office", "20260310T090000", "UID:s\nRECURRENCE-ID;TZID=Office:20260308T090000\n");
  CHECK(told(with_zone(since_1601, series + moved)) ==
        "2026-03-01T14:00:00Z 2026-03-10T13:00:00Z 2026-03-22T13:00:00Z");
}

TEST_CASE("Days in a calendar's own zone begin when its clocks jump over midnight, and last as they do") {
  const std::string midnight = zone("South", part("DAYLIGHT", "20260906T000000", "-0400", "-0300") +
                                                 part("STANDARD", "20260405T000000", "-0300", "-0400"));
  const auto found = calendar::read_busy(
      with_zone(midnight, "BEGIN:VEVENT\nDTSTART;VALUE=DATE;TZID=South:20260906\nEND:VEVENT\n"), shop_zone,
      year_2026);
  REQUIRE(found);
  REQUIRE(found->size() == 1);
  CHECK(to_text(found->front().from) == "2026-09-06T04:00:00Z");
  CHECK(to_text(found->front().to) == "2026-09-07T03:00:00Z");
}

TEST_CASE("What a name stands for: the IANA list, then the calendar, then names of Windows, then a tail") {
  const std::string nine = "20260302T090000";
  const auto fixed = [](const std::string& name) {
    return zone(name, part("STANDARD", "19700101T000000", "+0300", "+0300"));
  };
  CHECK(told(with_zone(fixed("America/New_York"), meeting("America/New_York", nine))) ==
        "2026-03-02T14:00:00Z");
  CHECK(told(with_zone("", meeting("Eastern Standard Time", nine))) == "2026-03-02T14:00:00Z");
  CHECK(told(with_zone(fixed("Eastern Standard Time"), meeting("Eastern Standard Time", nine))) ==
        "2026-03-02T06:00:00Z");
  CHECK(told(with_zone("", meeting("/lists.example/20260101_1/America/New_York", nine))) ==
        "2026-03-02T14:00:00Z");
  // "Indiana/Indianapolis" is no name, and "Indianapolis" neither.
  CHECK(told(with_zone("", meeting("/lists.example/America/Indiana/Knox", nine))) == "2026-03-02T15:00:00Z");
  CHECK(told(with_zone("", meeting("/America/New_York", nine))) == "2026-03-02T14:00:00Z");
  CHECK(told(with_zone(fixed("/lists.example/America/New_York"),
                       meeting("/lists.example/America/New_York", nine))) == "2026-03-02T06:00:00Z");
  CHECK(told(with_zone(fixed("(UTC+03:00) Here\\, there"), meeting("\"(UTC+03:00) Here, there\"", nine))) ==
        "2026-03-02T06:00:00Z");
  // Another calendar's zones are not this one's.
  CHECK(told(with_zone(fixed("Mine"), "") + with_zone("", meeting("Mine", nine))) ==
        "line 13: The time zone \"Mine\" is unknown, and this calendar does not define it.");
  CHECK(told(with_zone("", meeting("/lists.example/Nowhere", nine))) ==
        "line 3: The time zone \"/lists.example/Nowhere\" is unknown, and this calendar does not define it.");
}

TEST_CASE("A definition that can't be followed is told once, with its line, and only where it is named") {
  const auto refused = [](const std::string& parts) {
    const std::string own = zone("Mine", parts);
    CHECK(told(with_zone(own, meeting("UTC", "20260302T090000"))) == "2026-03-02T09:00:00Z");
    const auto found = calendar::read_busy(
        with_zone(own, meeting("Mine", "20260302T090000") + meeting("Mine", "20260303T090000")), shop_zone,
        year_2026);
    REQUIRE_FALSE(found);
    CHECK(found.error().size() == 1);
    CHECK_FALSE(found.error().front().remedy.empty());
    return found.error().front().where + ": " + found.error().front().what;
  };
  CHECK(refused("") == "line 2: This time zone does not say how far its clocks are from UTC.");
  CHECK(refused("BEGIN:STANDARD\nDTSTART:19700101T000000\nTZOFFSETFROM:+0100\nEND:STANDARD\n") ==
        "line 4: This part of a time zone has no \"TZOFFSETTO\".");
  CHECK(refused("BEGIN:STANDARD\nDTSTART:19700101T000000\nTZOFFSETTO:+0100\nEND:STANDARD\n") ==
        "line 4: This part of a time zone has no \"TZOFFSETFROM\".");
  CHECK(refused("BEGIN:STANDARD\nTZOFFSETFROM:+0100\nTZOFFSETTO:+0100\nEND:STANDARD\n") ==
        "line 4: This part of a time zone has no \"DTSTART\".");
  for (const char* no_offset : {"0100", "+1", "+2400", "+0160", "+010", "+01:00", "+010060", "x", ""})
    CHECK(refused(part("STANDARD", "19700101T000000", "+0100", no_offset)).starts_with("line 7: "));
  CHECK(refused(part("STANDARD", "19700101T000000", "+0100", "+0100", "TZOFFSETTO:+0200\n")) ==
        "line 8: This part of a time zone has a second \"TZOFFSETTO\".");
  CHECK(refused(part("STANDARD", "soon", "+0100", "+0100")).starts_with("line 5: "));
  CHECK(refused(part("STANDARD", "19700230T000000", "+0100", "+0100")) ==
        "line 5: \"DTSTART:19700230T000000\" is no time of the years 1 to 2999.");
  CHECK(
      refused(
          "BEGIN:STANDARD\nDTSTART;VALUE=DATE:19700101\nTZOFFSETFROM:+0100\nTZOFFSETTO:+0100\nEND:STANDARD\n")
          .starts_with("line 5: "));
  CHECK(refused("BEGIN:STANDARD\nDTSTART;TZID=Mine:19700101T000000\nTZOFFSETFROM:+0100\nTZOFFSETTO:+0100\n"
                "END:STANDARD\n") ==
        "line 5: \"DTSTART;TZID=Mine:19700101T000000\" names a time zone within a time zone.");
}

TEST_CASE("Hostile zones are refused in a sentence") {
  const auto by_rule = [](const std::string& rule) {
    return told(
        with_zone(zone("Mine", part("STANDARD", "16010101T000000", "+0100", "+0200", "RRULE:" + rule + "\n")),
                  meeting("Mine", "20260302T090000")));
  };
  CHECK(by_rule("FREQ=SECONDLY") == "line 8: \"RRULE:FREQ=SECONDLY\": this repeats by the second.");
  const std::string too_long =
      "line 8: The rules of time zones go on for longer than is followed: 10,000 years in a zone, 60,000 in "
      "a calendar.";
  CHECK(by_rule("FREQ=YEARLY;BYDAY=SU,MO,TU,WE,TH,FR,SA") == too_long);
  CHECK(by_rule("FREQ=DAILY") == "line 8: \"RRULE:FREQ=DAILY\": this repeats more often than by the year.");
  CHECK(by_rule("FREQ=NEVER").starts_with("line 8: "));
  std::string parts, dates;
  for (int i = 0; i < 1001; ++i) parts += part("STANDARD", "19700101T000000", "+0100", "+0100");
  CHECK(told(with_zone(zone("Mine", parts), meeting("Mine", "20260302T090000"))) ==
        "line 2: This time zone has more than 1,000 parts.");
  for (int i = 0; i < 10'001; ++i) {
    const CivilDate date = civil(day_of({1970, 1, 1}) + i);
    char text[40];
    std::snprintf(text, sizeof text, "RDATE:%04d%02d%02dT000000\n", date.year, static_cast<int>(date.month),
                  static_cast<int>(date.day));
    dates += text;
  }
  CHECK(told(with_zone(zone("Mine", part("STANDARD", "19690101T000000", "+0100", "+0100", dates)),
                       meeting("Mine", "20260302T090000"))) ==
        "line 5: The clocks of this time zone change more than 10,000 times.");
  // Many zones, each within what one may have, of rules that come to something or never.
  for (const std::string rule : {"FREQ=YEARLY;BYDAY=SU,MO,TU", "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30"}) {
    std::string zones, meetings;
    for (int i = 0; i < 110; ++i) {
      const std::string name = "Mine " + std::to_string(i);
      zones += zone(name, part("STANDARD", "16010101T000000", "+0100", "+0200",
                               "RRULE:" + rule + ";UNTIL=16020801T000000Z\nRDATE:19000101T000000\n"));
      meetings += meeting(name, "20260302T090000");
    }
    const auto found = calendar::read_busy(with_zone(zones, meetings), shop_zone, year_2026);
    REQUIRE(found.has_value() == rule.ends_with("TU"));
    if (!found) CHECK(found.error().back().what == too_long.substr(8));
  }
}
