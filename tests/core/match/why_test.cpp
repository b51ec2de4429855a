// Why somebody was left out, and what would serve more, on small evenings made by hand.
#include "core/match/why.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "small_question.h"

namespace {

using namespace wm;
using small_match::to_the_end;

const Instant evening{1772470800};  // Monday 2026-03-02, 17:00 in UTC

Interval hour(int n) { return {evening + 3600 * n, evening + 3600 * (n + 1)}; }

/// Ana has two hours at one lathe.
FitQuestion two_hours() {
  FitQuestion q;
  q.openings = {{hour(0), "ana", "lathe"}, {hour(1), "ana", "lathe"}};
  return q;
}

Waiter waiting(const char* person, int days, std::vector<OpeningIndex> fits) {
  return {person, "lathe", days, std::nullopt, std::move(fits)};
}

std::vector<LeftOut> left_out_of_best(const FitQuestion& q) {
  return left_out(q, fit_everyone(q, to_the_end).placed);
}

}  // namespace

TEST_CASE("Of three for two hours, the one who waited least is left out, and told who is before") {
  FitQuestion q = two_hours();
  q.waiters = {waiting("wim", 5, {0, 1}), waiting("xia", 9, {0, 1}), waiting("yve", 7, {0, 1})};
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{0, AllTaken{2, {1, 2}, {}, 0}}});
}

TEST_CASE("Who waited longest is left out where that serves two others, and both are named") {
  FitQuestion q = two_hours();
  // An hour and a half in the middle would take both hours.
  q.openings.push_back({{evening + 900, evening + 900 + 5400}, "ana", "lathe"});
  q.waiters = {waiting("wim", 40, {2}), waiting("xia", 1, {0, 1}), waiting("yve", 2, {0, 1})};
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{0, AllTaken{1, {}, {1, 2}, 0}}});
}

TEST_CASE("Who is taken as a second elsewhere is in the way as much as an assessor is") {
  FitQuestion q;
  q.openings = {{hour(0), "ana", "lathe", "bo"}, {hour(0), "bo", "saw"}, {hour(0), "cem", "mill", "bo"}};
  q.waiters = {waiting("wim", 9, {0}), waiting("xia", 5, {1}), waiting("yve", 3, {2})};
  CHECK(left_out_of_best(q) ==
        std::vector<LeftOut>{{1, AllTaken{1, {0}, {}, 0}}, {2, AllTaken{1, {0}, {}, 0}}});
}

TEST_CASE("Past the longest wait one comes before two others") {
  FitQuestion q = two_hours();
  q.openings.push_back({{evening + 900, evening + 900 + 5400}, "ana", "lathe"});
  q.waiters = {waiting("wim", 40, {2}), waiting("xia", 1, {0, 1}), waiting("yve", 2, {0, 1})};
  q.longest_wait = 39;
  CHECK(fit_everyone(q, to_the_end).placed == std::vector<Placed>{{0, 2}});
  q.longest_wait = 40;
  CHECK(fit_everyone(q, to_the_end).placed.size() == 2);
}

TEST_CASE("Whose quiz lapses before the next week comes first too") {
  FitQuestion q = two_hours();
  q.waiters = {waiting("wim", 50, {0}), waiting("xia", 1, {0})};
  q.waiters[1].lapses = q.next_week = evening + 86400;
  CHECK(fit_everyone(q, to_the_end).placed == std::vector<Placed>{{1, 0}});
  q.next_week = evening + 86399;
  CHECK(fit_everyone(q, to_the_end).placed == std::vector<Placed>{{0, 0}});
}

TEST_CASE("An assessor's longest day is in the way of nobody but the assessor") {
  FitQuestion q = two_hours();
  q.limits = {{"ana", 60, {}}};
  q.waiters = {waiting("wim", 5, {0}), waiting("xia", 3, {1})};
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{1, AllTaken{1, {}, {}, 1}}});
}

TEST_CASE("A quiz that lapses before the first opening is over says so, with both instants") {
  FitQuestion q = two_hours();
  q.waiters = {waiting("wim", 5, {0}), waiting("xia", 3, {})};
  q.waiters[1].lapses = evening + 3599;
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{1, NothingBefore{evening + 3599, evening + 3600}}});
  q.waiters[1].lapses = evening + 3600;
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{1, NoneFits{1}}});
}

TEST_CASE("Nobody has an opening for a target that has none") {
  FitQuestion q = two_hours();
  q.waiters = {waiting("wim", 5, {0}), {"xia", "saw", 3, std::nullopt, {}}};
  CHECK(left_out_of_best(q) == std::vector<LeftOut>{{1, NoOpening{}}});
}

TEST_CASE("More hours serve whoever they fit, one at a time, and not what is taken by what is proposed") {
  FitQuestion q = two_hours();
  q.waiters = {waiting("wim", 9, {0}), waiting("xia", 3, {0}), waiting("yve", 2, {0}),
               waiting("zoe", 1, {0})};
  const std::vector<Placed> placed = fit_everyone(q, to_the_end).placed;
  const std::vector<OpeningIndex> both{0, 1};
  const Extra saturday{{{hour(100), "bo", "lathe"}, {hour(101), "bo", "lathe"}}, {both, both, both, both}};
  const Extra same_lathe{{{hour(0), "bo", "lathe"}, {hour(1), "bo", "lathe"}}, {both, both, both, both}};
  const Extra for_nobody{{{hour(100), "bo", "lathe"}}, {{0}, {}, {}, {}}};
  CHECK(would_serve(q, placed, {saturday, same_lathe, for_nobody}) == std::vector<std::size_t>{2, 1, 0});
}

TEST_CASE("Whoever is left out of a best proposal cannot be added to it") {
  for (std::uint64_t seed = 1; seed <= 500; ++seed) {
    std::mt19937_64 random(seed);
    const FitQuestion q = small_match::question(random);
    const std::vector<Placed> placed = fit_everyone(q, to_the_end).placed;
    for (const LeftOut& each : left_out(q, placed)) {
      const auto* taken = std::get_if<AllTaken>(&each.why);
      INFO("seed " << seed);
      const bool some =
          std::any_of(q.waiters[each.waiter].fits.begin(), q.waiters[each.waiter].fits.end(),
                      [&](OpeningIndex o) { return !q.openings[o].assesses(q.waiters[each.waiter].person); });
      REQUIRE((taken != nullptr) == some);
      if (taken) REQUIRE(taken->before.size() + taken->instead.size() + taken->beyond_limits > 0);
    }
  }
}
