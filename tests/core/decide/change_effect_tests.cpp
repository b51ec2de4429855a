// What a change of a machine would take away: by hand, and for random shops by the evaluator that looks at
// everything anew.
#include <catch2/catch.hpp>

#include <random>
#include <set>

#include "core/decide/change_effect.h"
#include "plain_evaluator.h"
#include "small_shop.h"
#include "worlds.h"

using namespace wm;
using namespace wm::small;

namespace {

Requirement checkout(const std::string& name, bool renewed) {
  NeedCheckout need;
  need.checkout = name;
  need.renew_after_change = renewed;
  return {need};
}

/// The planer asks for a check-out of its own on each mode; that for jointing stays after a change. Dan is
/// checked out on both modes, ana and cy on one each; bo assesses.
Shop planer() {
  Shop shop;
  shop.people = {"ana", "bo", "cy", "dan"};
  Rulebook book{1, start - 1, start - 1, {{1, {}, {}, {}}}, {}};
  book.classes = {{"planer", 1, {"jointing", "planing"}, {}, {}, {}, {}}, {"saw", 1, {}, {}, {}, {}, {}}};
  book.classes[0].mode_gates["jointing"] = {{"j", Rung::independent, checkout("jointing", false), {}}};
  book.classes[0].mode_gates["planing"] = {{"p", Rung::independent, checkout("planing", true), {}}};
  book.classes[1].gates = {{"s", Rung::independent, checkout("sawing", true), {}}};
  shop.rulebooks = {book};
  add(shop, "appointed", start, Appoint{"bo", Everything{}, true, first + 9000});
  int number = 0;
  for (const auto& [person, name] : {std::pair{"dan", "planing"}, std::pair{"dan", "jointing"},
                                     std::pair{"ana", "planing"}, std::pair{"cy", "jointing"}})
    add(shop, "checked-" + std::to_string(++number), start + 60,
        Checkout{person, name, 0, Outcome::passed, "bo"});
  return shop;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a change says which check-outs it renews and whom that falls on, and enters nothing", "[decide]") {
  Current shop(planer());
  const Instant at = start + a_day;
  const ChangeEffect whole = effect_of_change(shop, "planer", at);
  CHECK(whole.checkouts == Names{"planing"});
  CHECK(whole.people == 2);
  REQUIRE(whole.shifts.size() == 2);
  CHECK(whole.shifts[0] == Shift{"ana", "planer/planing", at, {}});
  CHECK(whole.shifts[1] == Shift{"dan", "planer/planing", at, {}});
  CHECK(effect_of_change(shop, "planer/planing", at) == whole);
  CHECK(effect_of_change(shop, "planer/jointing", at) == ChangeEffect{});
  CHECK(effect_of_change(shop, "saw", at) == ChangeEffect{{"sawing"}, {}, 0});
  CHECK(shop.rung("ana", "planer/planing", at) == Rung::independent);
}

TEST_CASE("a change counts people and not the modes that each of them loses", "[decide]") {
  Shop both = planer();
  both.rulebooks[0].classes[0].mode_gates["jointing"] = {
      {"j", Rung::independent, checkout("jointing", true), {}}};
  Current shop(both);
  const ChangeEffect effect = effect_of_change(shop, "planer", start + a_day);
  CHECK(effect.checkouts == Names{"jointing", "planing"});
  CHECK(effect.shifts.size() == 4);
  CHECK(effect.people == 3);
}

TEST_CASE("a change before anything was signed, and before any rulebook, takes nothing", "[decide]") {
  Current shop(planer());
  CHECK(effect_of_change(shop, "planer", start + 30) == ChangeEffect{{"planing"}, {}, 0});
  CHECK(effect_of_change(shop, "planer", start - 30) == ChangeEffect{});
}

TEST_CASE("what a change takes is what differs for the plain evaluator once it is entered", "[decide]") {
  std::mt19937 random(31);
  std::size_t differing = 0;
  for (int world = 0; world < 300; ++world) {
    std::vector<std::uint32_t> numbers(9000);
    for (auto& n : numbers) n = static_cast<std::uint32_t>(random()) >> 4;
    worlds::Tape tape(numbers);
    Shop shop = worlds::shop_from(tape);
    Current current(shop);
    const std::vector<TargetName> targets = current.targets();
    const plain::Evaluator before(shop, {});
    // A change takes something only where somebody has just been checked out.
    std::vector<Instant> changes{worlds::instant_from(tape, shop)};
    for (const Record& record : shop.records)
      if (std::holds_alternative<Checkout>(record.fact)) changes.push_back(record.at + 1);
    for (const Instant at : changes) {
      const std::string target = worlds::target_from(tape, shop);
      const ChangeEffect effect = effect_of_change(current, target, at);
      Shop changed = shop;
      changed.records.push_back({"changed", at, at, {}, Change{target}});
      const plain::Evaluator after(changed, {});
      std::set<PersonId> people;
      for (const Shift& shift : effect.shifts) {
        people.insert(shift.person);
        INFO("world " << world << ", " << shift.person << " on " << shift.target);
        CHECK(before.standing(shift.person, shift.target, shift.from) !=
              after.standing(shift.person, shift.target, shift.from));
      }
      CHECK(effect.people == people.size());
      for (const Instant t : {at, at + a_day, worlds::instant_from(tape, shop)})
        for (const PersonId& person : shop.people)
          for (const TargetName& x : targets) {
            if (before.standing(person, x, t) == after.standing(person, x, t)) continue;
            ++differing;
            INFO("world " << world << ", " << person << " on " << x << " at " << t.seconds);
            CHECK(std::ranges::any_of(effect.shifts, [&, &name = x](const Shift& shift) {
              return shift.person == person && shift.target == name && shift.from <= t &&
                     (!shift.until || t < *shift.until);
            }));
          }
    }
  }
  CHECK(differing > 20);
}
