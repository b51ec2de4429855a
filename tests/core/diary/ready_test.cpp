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
  CHECK(unmet_but_for_checkout(with(paper(false))) == std::vector<std::string>{"g"});
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
