// What a check-out leaves open, on answers made by hand.
#include "core/diary/ready.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

Reason reason(Requirement need, bool holds, std::vector<Reason> of = {}) {
  Reason out;
  out.need = std::move(need);
  out.holds = holds;
  out.of = std::move(of);
  return out;
}

Reason paper(bool holds) { return reason({NeedDocument{}}, holds); }
Reason checkout(bool holds) { return reason({NeedCheckout{}}, holds); }

StandingAnswer with(Reason because, Rung standing = Rung::supervised) {
  StandingAnswer out;
  out.standing = standing;
  GateAnswer gate;
  gate.id = "g";
  gate.guards = Rung::independent;
  gate.state = because.holds ? GateState::met : GateState::unmet;
  gate.reason = std::move(because);
  out.gates.push_back(gate);
  return out;
}

}  // namespace

TEST_CASE("Only a check-out missing is ready; a paper missing as well is not") {
  CHECK(ready_for_checkout(with(checkout(false))));
  CHECK_FALSE(ready_for_checkout(with(paper(false))));
  CHECK(ready_for_checkout(with(reason({NeedAllOf{}}, false, {paper(true), checkout(false)}))));
  CHECK_FALSE(ready_for_checkout(with(reason({NeedAllOf{}}, false, {paper(false), checkout(false)}))));
}

TEST_CASE("What is missing beside the check-out is told part by part") {
  const auto missing = [](const StandingAnswer& answer, bool for_checkout) {
    std::vector<Requirement> out;
    for (const Reason& each : missing_for(answer, for_checkout)) out.push_back(each.need);
    return out;
  };
  using Needs = std::vector<Requirement>;
  const Requirement a_paper{NeedDocument{}}, a_quiz{NeedQuiz{}}, a_checkout{NeedCheckout{}};
  const Reason quiz = reason(a_quiz, false);
  CHECK(missing(with(paper(false)), true) == Needs{a_paper});
  CHECK(missing(with(checkout(false)), true).empty());
  CHECK(missing(with(reason({NeedAllOf{}}, false, {paper(false), checkout(false), quiz, paper(true)})),
                true) == Needs{a_paper, a_quiz});
  // A paper that two gates ask for is missing once.
  StandingAnswer twice = with(paper(false));
  twice.gates.push_back(twice.gates.front());
  CHECK(missing(twice, true) == Needs{a_paper});
  // Of a choice the whole, with the parts that are missing.
  const Reason choice = reason({NeedAnyOf{}}, false, {paper(false), quiz});
  CHECK(missing(with(choice), true) == Needs{choice.need});
  CHECK(missing_for(with(choice), true)[0].of == std::vector{paper(false), quiz});
  CHECK(missing(with(reason({NeedAnyOf{}}, false, {quiz, checkout(false)})), true).empty());
  // To work with a supervisor nothing more is asked for, but there a check-out may be missing.
  CHECK(missing(with(paper(false)), false).empty());
  StandingAnswer barred = with(checkout(false), Rung::barred);
  barred.gates[0].guards = Rung::supervised;
  CHECK(missing(barred, false) == Needs{a_checkout});
  CHECK(missing(barred, true) == Needs{a_checkout});
}

TEST_CASE("Of some that are asked for, the check-out counts as one") {
  CHECK(ready_for_checkout(with(reason({NeedAnyOf{}}, false, {paper(false), checkout(false)}))));
  CHECK(ready_for_checkout(
      with(reason({NeedSomeOf{2, {}}}, false, {paper(true), paper(false), checkout(false)}))));
  CHECK_FALSE(ready_for_checkout(
      with(reason({NeedSomeOf{3, {}}}, false, {paper(true), paper(false), checkout(false)}))));
}

TEST_CASE("Whoever may not even work with a supervisor is not ready, whatever the gates say") {
  CHECK_FALSE(ready_for_checkout(with(checkout(false), Rung::barred)));
  CHECK(ready_for_checkout(with(checkout(true), Rung::independent)));
}
