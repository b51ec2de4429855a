// What one record more changes in a shop that is kept current, on small shops made by hand: what random shops
// hardly ever make turn on a record taken in.
#include <catch2/catch.hpp>

#include "core/decide/current.h"
#include "plain_evaluator.h"
#include "small_shop.h"

using namespace wm;
using namespace wm::small;

namespace {

/// Takes the record in, and looks at ana's standing on `x` a second before and at `at`: both must be what the
/// plain evaluator says of a shop made anew, and different from what it was at one of them.
void check_taken_in(Shop shop, Fact fact, Instant when, const TargetName& x, Instant at) {
  Current current(shop);
  const Rung was_before = current.rung("ana", x, at - 1), was = current.rung("ana", x, at);
  add(shop, "new", when, std::move(fact));
  const std::vector<Shift> shifts = current.take(shop.records.back());
  const plain::Evaluator plain(shop, {});
  CHECK(current.rung("ana", x, at - 1) == plain.standing("ana", x, at - 1));
  CHECK(current.rung("ana", x, at) == plain.standing("ana", x, at));
  CHECK((was_before != plain.standing("ana", x, at - 1) || was != plain.standing("ana", x, at)));
  CHECK(std::any_of(shifts.begin(), shifts.end(), [&](const Shift& shift) {
    return shift.person == "ana" && shift.target == x && shift.from <= at &&
           (!shift.until || at < *shift.until);
  }));
}

}  // namespace

TEST_CASE("a check-out rests on its assessor's standing one second before, though it ends in that second",
          "[decide]") {
  NeedCheckout checkout;
  checkout.checkout = "saw";
  Shop shop = shop_asking({NeedAnyOf{{{NeedDocument{"waiver", {}, {}}}, {checkout}}}});
  shop.records.clear();
  add(shop, "appointed", start, Appoint{"bo", Everything{}, false, {}});
  const Instant ends = start + 2 * a_day;
  add(shop, "checked", ends, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  check_taken_in(shop, Document{"bo", "waiver", first + 1}, start + 60, "saw", ends);
}

TEST_CASE("a change of the machine taken in takes a check-out away", "[decide]") {
  NeedCheckout checkout;
  checkout.checkout = "saw";
  checkout.renew_after_change = true;
  Shop shop = shop_asking({checkout});
  add(shop, "checked", start + 60, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  check_taken_in(shop, Change{"saw"}, start + 90, "saw", start + 90);
}

TEST_CASE("a record dated back before a rulebook spares by the modes that a class had then", "[decide]") {
  // The saw had two modes, and cross-cutting asked for a paper. Now it is one machine, and who was
  // independent on both modes is spared.
  Shop shop = shop_asking({NeedAge{60}});
  Rulebook now = shop.rulebooks[0];
  now.version = 2;
  now.effective_from = now.recorded = start + 10 * a_day;
  now.classes[0].gates[0].existing_until = first + 900;
  MachineClass& before = shop.rulebooks[0].classes[0];
  before.modes = {"cross", "rip"};
  before.gates.clear();
  before.mode_gates["cross"] = {{"c", Rung::independent, {NeedDocument{"cross paper", {}, {}}}, {}}};
  shop.rulebooks.push_back(now);
  for (const TargetName x : {"saw", "saw/cross", "saw/rip"})
    check_taken_in(shop, Document{"ana", "cross paper", {}}, start + 60, x, now.effective_from);
}

TEST_CASE("what is recorded on a class and taken in counts for its modes", "[decide]") {
  NeedPractice practice;
  practice.sessions = 1;
  Shop shop = shop_asking({practice});
  shop.rulebooks[0].classes[0].modes = {"cross", "rip"};
  for (const TargetName x : {"saw/cross", "saw/rip"})
    check_taken_in(shop, Supervised{"ana", "saw", 30, "bo"}, start + 60, x, start + 60);
}

TEST_CASE("a record taken in matters to what rests on what rests on it, whatever the order of names",
          "[decide]") {
  for (const bool turned : {false, true}) {
    const std::string bottom = turned ? "c" : "a", top = turned ? "a" : "c";
    const auto asks = [](Requirement need) {
      return std::vector<Gate>{{"g", Rung::independent, std::move(need), {}}};
    };
    Shop shop = shop_asking({NeedAge{18}});
    shop.rulebooks[0].classes = {{bottom, 1, {}, asks({NeedDocument{"waiver", {}, {}}}), {}, {}, {}},
                                 {"b", 1, {}, asks({NeedStanding{bottom, Rung::independent}}), {}, {}, {}},
                                 {top, 1, {}, asks({NeedStanding{"b", Rung::independent}}), {}, {}, {}}};
    check_taken_in(shop, Document{"ana", "waiver", {}}, start + 60, top, start + 60);
  }
}
