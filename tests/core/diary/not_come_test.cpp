// A shop's rule for whoever does not come, against a count day by day.
#include "core/diary/not_come.h"

#include <rapidcheck.h>
#include <algorithm>
#include <catch2/catch.hpp>

namespace {

using namespace wm;

/// Whether, looking back from one day, so many lie in the days up to it.
bool reached_on(const NotComeRule& rule, const std::vector<Day>& not_come, Day day) {
  const auto counted = std::count_if(not_come.begin(), not_come.end(), [&](Day each) {
    return day.number - rule.in_days < each.number && each <= day;
  });
  return counted >= rule.most;
}

}  // namespace

TEST_CASE("The third time within ninety days is followed by thirty days without a booking") {
  const Day last = day_of({2026, 11, 30});
  const NotComeRule rule{3, 90, 30};
  CHECK(rests_through(rule, {last, last + -89, last + -10}) == day_of({2026, 12, 30}));
  CHECK(rests_through(rule, {last, last + -90, last + -10}) == std::nullopt);
  CHECK(rests_through(rule, {last, last}) == std::nullopt);
  CHECK(rests_through({1, 1, 7}, {last}) == last + 7);
  CHECK(rests_through(rule, {}) == std::nullopt);
}

TEST_CASE("The last day of rest is that of the last day on which the rule was reached") {
  CHECK(rc::check([] {
    const NotComeRule rule{*rc::gen::inRange(1, 5), *rc::gen::inRange(1, 40), *rc::gen::inRange(1, 40)};
    std::vector<Day> days;
    for (int n = *rc::gen::inRange(0, 12); n > 0; --n) days.push_back({*rc::gen::inRange(0, 100)});
    std::optional<Day> last;
    for (const Day each : days)
      if (reached_on(rule, days, each) && (!last || each + rule.rest_days > *last))
        last = each + rule.rest_days;
    RC_ASSERT(rests_through(rule, days) == last);
  }));
}
