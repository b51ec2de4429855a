// Who is in the building beside two who are booked with each other.
#include "core/diary/adults.h"

#include <rapidcheck.h>
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/time/text.h"

namespace {

using namespace wm;

constexpr int monday = 0;
const Zone chicago = Zone::named("America/Chicago").value();

/// Monday 30 November 2026.
Interval from_to(int from_hour, int to_hour) {
  const Instant day = chicago.start(day_of({2026, 11, 30}));
  return {day + 3600 * from_hour, day + 3600 * to_hour};
}

AssessorHours in(const PersonId& who, int from_hour, int to_hour) {
  AssessorHours out;
  out.assessor = who;
  out.schedule.weekly = {{monday, {60 * from_hour, 60 * to_hour}}};
  return out;
}

bool pip_is_under_18(const PersonId& who, Instant) { return who == "pip"; }

bool may(const ShopHours& hours, const PersonId& one, const PersonId& other, const Interval& when) {
  return enough_adults(chicago, hours, {one, other}, when, pip_is_under_18);
}

}  // namespace

TEST_CASE("Two adults are booked with each other whoever else is in") {
  CHECK(may({}, "kim", "mara", from_to(17, 18)));
}

TEST_CASE("Somebody under 18 is booked only while another adult is in throughout, on either side") {
  ShopHours hours;
  hours.assessors = {in("mara", 17, 20), in("ivo", 18, 19)};
  CHECK(may(hours, "pip", "mara", from_to(18, 19)));
  CHECK(may(hours, "mara", "pip", from_to(18, 19)));
  CHECK_FALSE(may(hours, "pip", "mara", from_to(17, 18)));
  CHECK_FALSE(may(hours, "pip", "mara", from_to(18, 20)));
  CHECK_FALSE(may(hours, "pip", "ivo", from_to(16, 18)));
  CHECK(may(hours, "pip", "ivo", from_to(17, 20)));
}

TEST_CASE("One on duty may be the assessor, so that two must be") {
  ShopHours hours;
  hours.staffed = Schedule{{{monday, {0, 1440}}}, {}, {}, {}};
  CHECK_FALSE(may(hours, "pip", "mara", from_to(17, 18)));
  hours.two_on_duty.weekly = {{monday, {17 * 60, 20 * 60}}};
  CHECK(may(hours, "pip", "mara", from_to(17, 20)));
  CHECK_FALSE(may(hours, "pip", "mara", from_to(17, 21)));
  hours.open =
      Schedule{{{monday, {0, 1440}}}, {}, {{day_of({2026, 11, 30}), day_of({2026, 11, 30}), {}}}, {}};
  CHECK_FALSE(may(hours, "pip", "mara", from_to(17, 20)));
}

TEST_CASE("Adults may take turns, and somebody else under 18 is none") {
  ShopHours hours;
  hours.assessors = {in("ivo", 17, 18), in("lou", 18, 19)};
  CHECK(may(hours, "pip", "mara", from_to(17, 19)));
  CHECK_FALSE(enough_adults(chicago, hours, {"pip", "mara"}, from_to(17, 19),
                            [](const PersonId& who, Instant) { return who == "pip" || who == "lou"; }));
  CHECK_FALSE(enough_adults(chicago, hours, {"pip", "lou"}, from_to(17, 18),
                            [](const PersonId& who, Instant) { return who == "pip" || who == "lou"; }));
}

TEST_CASE("Whatever the hours, at every quarter of an hour of a booking of somebody under 18 a third is in") {
  CHECK(rc::check([] {
    ShopHours hours;
    for (const char* who : {"mara", "ivo", "lou", "pip"}) {
      const int from = *rc::gen::inRange(0, 20);
      hours.assessors.push_back(in(who, from, from + *rc::gen::inRange(1, 5)));
    }
    const int from = *rc::gen::inRange(0, 20);
    const Interval when = from_to(from, from + *rc::gen::inRange(1, 4));
    bool always = true;
    for (Instant t = when.from; t < when.to; t = t + 900) {
      const auto third = [&](const AssessorHours& each) {
        const std::vector<Interval> times = times_of(chicago, each.schedule, t, t + 1);
        return each.assessor != "mara" && each.assessor != "pip" && !times.empty();
      };
      always = always && std::any_of(hours.assessors.begin(), hours.assessors.end(), third);
    }
    RC_ASSERT(may(hours, "pip", "mara", when) == always);
  }));
}

TEST_CASE("Two adults of three are the two who have to be in, and of two under 18 a third adult is one") {
  ShopHours hours;
  hours.assessors = {in("ivo", 18, 19), in("lou", 18, 19)};
  const auto pip_and_lou = [](const PersonId& who, Instant) { return who == "pip" || who == "lou"; };
  CHECK(may(hours, "pip", "mara", from_to(18, 19)));
  CHECK_FALSE(may(hours, "pip", "mara", from_to(17, 18)));
  // By arrangement, whatever hours are entered: the two are there with them.
  CHECK(enough_adults(chicago, {}, {"pip", "mara", "ivo"}, from_to(17, 18), pip_is_under_18));
  CHECK(enough_adults(chicago, {}, {"kim", "pip", "mara"}, from_to(17, 18), pip_is_under_18));
  CHECK(enough_adults(chicago, {}, {"kim", "mara", "ivo"}, from_to(17, 18), pip_is_under_18));
  CHECK(enough_adults(chicago, hours, {"pip", "lou", "mara"}, from_to(18, 19), pip_and_lou));
  CHECK_FALSE(enough_adults(chicago, hours, {"pip", "lou", "mara"}, from_to(17, 18), pip_and_lou));
  // Whose hours those are is one of the three.
  CHECK_FALSE(enough_adults(chicago, hours, {"pip", "lou", "ivo"}, from_to(18, 19), pip_and_lou));
  CHECK_FALSE(enough_adults(chicago, hours, {"pip", "lou", "kit"}, from_to(18, 19),
                            [](const PersonId&, Instant) { return true; }));
}
