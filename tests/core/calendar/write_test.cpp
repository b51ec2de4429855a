// Calendars as they are written: what RFC 5545 asks of their lines, and that what is written is read again.
#include "core/calendar/write.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/calendar/busy.h"
#include "core/text/utf8.h"
#include "core/time/text.h"

namespace {

using namespace wm;
using namespace wm::calendar;

const Instant evening = parse_instant("2026-03-02T17:30:00Z").value();

CalendarFile one_event() {
  CalendarFile file;
  file.name = "Jonas Lindqvist";
  file.organizer = "mailto:desk@shop.example";
  file.written = evening - 86400;
  file.events = {{"b17@shop.example",
                  0,
                  false,
                  {evening, evening + 3600},
                  "Check-out: jointer, with Mara",
                  "",
                  "Hall 2"}};
  return file;
}

std::vector<std::string> lines(const std::string& text) {
  std::vector<std::string> out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find("\r\n", at);
    REQUIRE(end != std::string::npos);
    out.push_back(text.substr(at, end - at));
    at = end + 2;
  }
  return out;
}

bool has(const std::vector<std::string>& all, const std::string& line) {
  return std::find(all.begin(), all.end(), line) != all.end();
}

}  // namespace

TEST_CASE("An event says who, when and which one it is, in UTC") {
  const auto all = lines(write_calendar(one_event()));
  for (const char* line : {"BEGIN:VCALENDAR", "VERSION:2.0", "METHOD:PUBLISH", "UID:b17@shop.example",
                           "DTSTAMP:20260301T173000Z", "DTSTART:20260302T173000Z", "DTEND:20260302T183000Z",
                           "SEQUENCE:0", "STATUS:CONFIRMED", "ORGANIZER:mailto:desk@shop.example",
                           "SUMMARY:Check-out: jointer\\, with Mara", "LOCATION:Hall 2", "END:VCALENDAR"}) {
    INFO(line);
    CHECK(has(all, line));
  }
}

TEST_CASE("A cancellation is the same event with the next number") {
  CalendarFile file = one_event();
  file.method = Method::cancel;
  file.events[0].cancelled = true;
  file.events[0].sequence = 1;
  const auto all = lines(write_calendar(file));
  CHECK(has(all, "METHOD:CANCEL"));
  CHECK(has(all, "STATUS:CANCELLED"));
  CHECK(has(all, "SEQUENCE:1"));
  CHECK(has(all, "UID:b17@shop.example"));
}

TEST_CASE("Text is escaped as RFC 5545, 3.3.11, says") {
  CalendarFile file = one_event();
  file.events[0].summary = "a\\b;c,d:e\nf";
  CHECK(has(lines(write_calendar(file)), "SUMMARY:a\\\\b\\;c\\,d:e\\nf"));
}

TEST_CASE("No line is longer than 75 octets, and none is broken within a character") {
  CalendarFile file = one_event();
  file.events[0].description.clear();
  for (int i = 0; i < 60; ++i) file.events[0].description += i % 3 == 0 ? "é" : i % 3 == 1 ? "木" : "🔧 ";
  for (const std::string& line : lines(write_calendar(file))) {
    CHECK(line.size() <= 75);
    for (std::string_view rest = line; !rest.empty();) {
      char32_t code = 0;
      const std::size_t size = character(rest, code);
      REQUIRE(size > 0);
      rest.remove_prefix(size);
    }
  }
}

TEST_CASE("What can't stand in a calendar becomes a blank") {
  CalendarFile file = one_event();
  file.events[0].summary =
      "a\x01"
      "b\xFF"
      "c";
  CHECK(has(lines(write_calendar(file)), "SUMMARY:a b c"));
}

TEST_CASE("What is written is busy when it is read again, and not where it was cancelled") {
  CalendarFile file = one_event();
  file.events.push_back({"b18@shop.example", 1, true, {evening + 7200, evening + 10800}, "x", "", ""});
  const auto busy = read_busy(write_calendar(file), Zone::utc(), {evening - 86400, evening + 86400});
  REQUIRE(busy);
  CHECK(*busy == std::vector<Interval>{{evening, evening + 3600}});
}
