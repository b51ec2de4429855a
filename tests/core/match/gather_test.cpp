// One question out of many: what fits each, and what lapses.
#include "core/match/gather.h"

#include <catch2/catch.hpp>

#include "core/match/fit.h"
#include "small_question.h"

namespace {

using namespace wm;

const Instant monday{1772409600};  // 2026-03-02, midnight in UTC

/// Ana is in on Mondays from five to seven, with two lathes.
SlotQuestion asked(const PersonId& person, Instant ready_before) {
  SlotQuestion q;
  q.person = person;
  q.assessors = {"ana"};
  q.units = {"lathe 1", "lathe 2"};
  q.from = monday;
  q.to = monday + 86400 * 14;
  q.step = 60;
  q.hours = {{"ana", 0, 17 * 60, 19 * 60}};
  q.ready = [ready_before](const Interval& when) { return when.to <= ready_before; };
  q.able = [](const PersonId&, const Interval&) { return true; };
  q.in_service = [](const MachineId&, const Interval&) { return true; };
  return q;
}

}  // namespace

TEST_CASE(
    "Openings are shared by all whom they fit, one for each unit, and a lapse before the next week is found "
    "to the second") {
  FitQuestion whole;
  whole.next_week = monday + 86400 * 7;
  Gathering gathering(whole, monday);
  const Instant tuesday = monday + 86400 + 12345;
  gathering.add(asked("wim", last_instant), "lathe", 9);
  gathering.add(asked("xia", tuesday), "lathe", 1);
  gathering.add(asked("yve", monday + 18 * 3600), "lathe", 5);
  const FitQuestion q = std::move(gathering).done();
  REQUIRE(q.waiters.size() == 3);
  CHECK(q.openings.size() == 8);  // two Mondays, two hours, two lathes
  CHECK(q.waiters[0].fits.size() == 8);
  CHECK_FALSE(q.waiters[0].lapses);
  CHECK(q.waiters[1].fits == std::vector<OpeningIndex>{0, 1, 2, 3});
  CHECK(q.waiters[1].lapses == tuesday);
  CHECK(q.waiters[2].fits == std::vector<OpeningIndex>{0, 1});
  CHECK(q.waiters[2].lapses == monday + 18 * 3600);
  for (const Opening& each : q.openings) CHECK(each.second.empty());
  // Whoever's lapses come first, and so this Monday is theirs.
  const Proposal proposal = fit_everyone(q, small_match::to_the_end);
  CHECK(proposal.measures.served == 3);
  CHECK(proposal.measures.first == 2);
}

TEST_CASE("An opening for two names both, and is another than with one of them, or with somebody else") {
  FitQuestion whole;
  whole.next_week = monday + 86400 * 7;
  Gathering gathering(whole, monday);
  SlotQuestion two = asked("wim", last_instant);
  two.to = monday + 86400;
  two.units = {"lathe 1"};
  two.assessors = {"ana", "bo", "cem"};
  two.hours.push_back({"bo", 0, 17 * 60, 18 * 60});
  two.hours.push_back({"cem", 0, 17 * 60, 18 * 60});
  two.two_assessors = [](const Interval&) { return true; };
  gathering.add(two, "shaper", 1);
  SlotQuestion one = two;
  one.person = "xia";
  one.two_assessors = {};
  gathering.add(one, "shaper", 1);
  const FitQuestion q = std::move(gathering).done();
  std::vector<std::pair<PersonId, PersonId>> those;
  for (const OpeningIndex each : q.waiters[0].fits)
    those.emplace_back(q.openings[each].assessor, q.openings[each].second);
  CHECK(those == std::vector<std::pair<PersonId, PersonId>>{{"ana", "bo"}, {"ana", "cem"}, {"bo", "cem"}});
  CHECK(q.openings.size() == 7);  // and one with each of them at five, one with Ana at six
}
