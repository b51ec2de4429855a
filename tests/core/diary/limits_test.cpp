// What an assessor takes on, against the same question put to the matching.
#include "core/diary/limits.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/match/fit.h"
#include "core/time/period.h"

namespace {

using namespace wm;

const Zone lisbon = Zone::named("Europe/Lisbon").value();
const Instant noon = lisbon.start(day_of({2026, 3, 28})) + 12 * 3600;

Booked given(int from_minute, int minutes) {
  return {"kim", "mara", "m1", {noon + 60 * from_minute, noon + 60 * (from_minute + minutes)}};
}
Interval at(int from_minute, int minutes) { return given(from_minute, minutes).when; }

/// Whether the matching would propose it.
bool proposed(const AssessorLimits& limits, const std::vector<Booked>& booked, const Interval& when) {
  FitQuestion question;
  question.zone = lisbon;
  question.openings = {{when, "mara", "m2"}};
  question.waiters = {{"ada", "lathe", 1, {}, {0}}};
  question.booked = booked;
  question.limits = {limits};
  return fit_everyone(question, [](Aim, const Measures&) { return true; }).measures.served == 1;
}

}  // namespace

TEST_CASE("A day of two hours takes two one-on-ones of an hour, and no third") {
  const AssessorLimits limits{"mara", 120, {}};
  CHECK(within_limits(lisbon, limits, {given(0, 60)}, at(120, 60)));
  CHECK_FALSE(within_limits(lisbon, limits, {given(0, 60), given(60, 60)}, at(180, 60)));
  CHECK(within_limits(lisbon, limits, {given(0, 60), given(60, 60)}, at(24 * 60, 60)));
}

TEST_CASE("Two hours on end are enough, and half an hour of rest begins anew") {
  const AssessorLimits limits{"mara", {}, Stretch{120, 30}};
  CHECK_FALSE(within_limits(lisbon, limits, {given(0, 60), given(60, 60)}, at(120, 60)));
  CHECK_FALSE(within_limits(lisbon, limits, {given(0, 60), given(60, 60)}, at(149, 60)));
  CHECK(within_limits(lisbon, limits, {given(0, 60), given(60, 60)}, at(150, 60)));
  CHECK_FALSE(within_limits(lisbon, limits, {given(60, 60), given(120, 60)}, at(0, 60)));
}

TEST_CASE("What is within limits is what the matching would propose, on days of other lengths too") {
  CHECK(rc::check([] {
    AssessorLimits limits{"mara", {}, {}};
    if (*rc::gen::arbitrary<bool>()) limits.longest_day = 15 * *rc::gen::inRange(1, 24);
    if (*rc::gen::arbitrary<bool>())
      limits.stretch = Stretch{15 * *rc::gen::inRange(1, 16), 15 * *rc::gen::inRange(0, 4)};
    std::vector<Booked> booked;
    int minute = 15 * *rc::gen::inRange(0, 8);
    for (int n = *rc::gen::inRange(0, 5); n > 0; --n) {
      const int minutes = 15 * *rc::gen::inRange(1, 6);
      booked.push_back(given(minute, minutes));
      if (*rc::gen::inRange(0, 4) == 0) std::swap(booked.back().person, booked.back().assessor);
      if (*rc::gen::inRange(0, 4) == 0) {
        booked.back().second = "ivo";
        std::swap(booked.back().second, booked.back().assessor);
      }
      minute += minutes + 15 * *rc::gen::inRange(0, 8);
    }
    const Interval when = at(15 * *rc::gen::inRange(0, 60), 15 * *rc::gen::inRange(1, 8));
    for (const Booked& each : booked) RC_PRE(!overlap(each.when, when));
    RC_ASSERT(within_limits(lisbon, limits, booked, when) == proposed(limits, booked, when));
  }));
}
