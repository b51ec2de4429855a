#include <catch2/catch.hpp>

#include <cstdio>
#include <fstream>
#include <memory>
#include <optional>

#include "core/time/text.h"
#include "core/time/zone.h"

using namespace wm;

namespace {

Instant instant(const char* text) { return *parse_instant(text); }
Day day(const char* text) { return *parse_day(text); }

}  // namespace

TEST_CASE("civil days start where Python's zoneinfo has them start, in every zone", "[time][slow]") {
  const std::string command = std::string("python3 '") + WM_TESTS + "/reference/zone_starts.py'";
  const std::unique_ptr<FILE, int (*)(FILE*)> facts(popen(command.c_str(), "r"), pclose);
  REQUIRE(facts);
  char name[128], kind[16];
  long long from = 0, to = 0;
  std::string current;
  std::optional<Zone> zone;
  std::size_t compared = 0, wrong = 0, zones = 0;
  while (std::fscanf(facts.get(), "%127s %15s %lld %lld", name, kind, &from, &to) == 4) {
    if (std::string(name) == "localtime") continue;  // the machine's own, no IANA name
    if (current != name) {
      current = name;
      const auto named = Zone::named(current);
      INFO(current);
      REQUIRE(named);
      zone = *named;
      ++zones;
    }
    const bool start = std::string(kind) == "start";
    const long long ours =
        start ? zone->start({static_cast<std::int32_t>(from)}).seconds : zone->day({from}).number;
    ++compared;
    if (ours != to && ++wrong < 10)
      UNSCOPED_INFO(name << " " << kind << " " << from << ": " << ours << ", Python " << to);
  }
  CHECK(wrong == 0);
  CHECK(zones > 400);
  CHECK(compared > 200'000);
}

TEST_CASE("a day lasts from its first second to the one before the next day's", "[time]") {
  for (const char* name :
       {"UTC", "America/Chicago", "Asia/Tehran", "Pacific/Kiritimati", "Pacific/Pago_Pago"}) {
    const Zone zone = *Zone::named(name);
    for (Day d = day("2026-01-01"); d < day("2027-01-01"); d = d + 1) {
      INFO(name << " " << to_text(d));
      REQUIRE(zone.day(zone.start(d)) == d);
      REQUIRE(zone.day(zone.start(d + 1) - 1) == d);
    }
  }
}

TEST_CASE("clocks that jump forward leave a day of 23 hours, back of 25", "[time]") {
  // Transition dates of 2026: tz database; each also recomputed with java.time and zoneinfo.
  const Zone new_york = *Zone::named("America/New_York");
  CHECK(new_york.start(day("2026-03-09")).seconds - new_york.start(day("2026-03-08")).seconds == 23 * 3600);
  CHECK(new_york.start(day("2026-11-02")).seconds - new_york.start(day("2026-11-01")).seconds == 25 * 3600);
  const Zone lord_howe = *Zone::named("Australia/Lord_Howe");
  CHECK(lord_howe.start(day("2026-10-05")).seconds - lord_howe.start(day("2026-10-04")).seconds ==
        23 * 3600 + 1800);
}

TEST_CASE("a wall-clock time that comes twice is the first, one that never comes the moment of the jump",
          "[time]") {
  const Zone new_york = *Zone::named("America/New_York");
  CHECK(new_york.instant({day("2026-11-01"), 1, 30, 0}) == instant("2026-11-01T05:30:00Z"));
  CHECK(new_york.instant({day("2026-03-08"), 2, 30, 0}) == instant("2026-03-08T07:00:00Z"));
  const Zone london = *Zone::named("Europe/London");
  CHECK(london.instant({day("2026-10-25"), 1, 30, 0}) == instant("2026-10-25T00:30:00Z"));
}

TEST_CASE("a day that a zone skipped starts with the next one", "[time]") {
  // Samoa went from 29 to 31 December 2011 (tz database).
  const Zone apia = *Zone::named("Pacific/Apia");
  CHECK(apia.start(day("2011-12-30")) == apia.start(day("2011-12-31")));
}

TEST_CASE("names that are no IANA zone are refused", "[time]") {
  for (const char* name :
       {"", "localtime", "posixrules", "right/UTC", "posix/UTC", "Fixed/UTC+01:00:00", "/etc/passwd",
        "../zoneinfo/UTC", "America/chicago", "America", "UTC+1", "Nowhere/Town", "tzdata.zi"}) {
    INFO(name);
    CHECK_FALSE(Zone::named(name));
  }
  CHECK(Zone::named("UTC"));
  CHECK(Zone::named("America/Argentina/Buenos_Aires"));
}
