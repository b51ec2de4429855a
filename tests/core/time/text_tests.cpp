#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/time/text.h"

using namespace wm;

TEST_CASE("instants are written and read as RFC 3339 has them", "[time]") {
  // RFC 3339 section 5.8: 1996-12-19T16:39:57-08:00 is 1996-12-20T00:39:57Z, 851042397 seconds after 1970.
  CHECK(parse_instant("1996-12-20T00:39:57Z") == Instant{851042397});
  CHECK(to_text(Instant{851042397}) == "1996-12-20T00:39:57Z");
  CHECK(to_text(first_instant) == "1900-01-01T00:00:00Z");
  CHECK(to_text(last_instant) == "2999-12-31T23:59:59Z");
  CHECK(to_text(Instant{-1}) == "1969-12-31T23:59:59Z");
}

TEST_CASE("text that is not exactly an instant or a day is refused", "[time]") {
  for (const char* text :
       {"", "2026-03-14", "2026-03-14T15:20:00", "2026-03-14T15:20:00+00:00", "2026-03-14t15:20:00Z",
        "2026-03-14T15:20:00z", "2026-03-14 15:20:00Z", "2026-03-14T24:00:00Z", "2026-03-14T15:60:00Z",
        "1990-12-31T23:59:60Z", "2026-02-29T00:00:00Z", "2026-13-01T00:00:00Z", "1899-12-31T23:59:59Z",
        "3000-01-01T00:00:00Z", "2026-03-14T15:20:00.5Z", "+026-03-14T15:20:00Z", " 2026-03-14T15:20:0Z"}) {
    INFO(text);
    CHECK_FALSE(parse_instant(text));
  }
  for (const char* text : {"", "2026-3-14", "2026-02-29", "1900-02-29", "2026-00-10", "2026-01-00",
                           "2026-04-31", "20260314", "2026-03-14 ", "3000-01-01", "1899-12-31"}) {
    INFO(text);
    CHECK_FALSE(parse_day(text));
  }
  CHECK(parse_day("2000-02-29"));
}

TEST_CASE("every instant and day of the known years comes back from its text", "[time]") {
  const bool holds = rc::check("round trip", [] {
    const Instant t{*rc::gen::inRange(first_instant.seconds, last_instant.seconds + 1)};
    RC_ASSERT(parse_instant(to_text(t)) == t);
    const Day d{*rc::gen::inRange(first_day.number, last_day.number + 1)};
    RC_ASSERT(parse_day(to_text(d)) == d);
  });
  REQUIRE(holds);
}
