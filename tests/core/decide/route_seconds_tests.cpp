// Routes that turn on a single second, on small shops made by hand: random shops hardly ever make them.
#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "plain_evaluator.h"
#include "small_shop.h"

using namespace wm;
using namespace wm::small;

namespace {

/// Ana's way to work on `x` alone, from then on; what the plain evaluator says it leads to is checked.
Route route_of(const Shop& shop, Instant from, const TargetName& x = "saw") {
  Route route = Decider(shop).route("ana", x, Rung::independent, from);
  if (!route.reaches) return route;
  Shop with = shop;
  with.records.insert(with.records.end(), route.steps.begin(), route.steps.end());
  const plain::Evaluator plain(with, {});
  CHECK(plain.standing("ana", x, *route.reaches) == Rung::independent);
  CHECK(route.shortest);
  return route;
}

/// Ana turns `years` on that day.
void turns(Shop& shop, int years, Day day) {
  const CivilDate date = civil(day);
  add(shop, "birth", start, Birth{"ana", day_of({date.year - years, date.month, date.day})});
}

MachineClass machine(const std::string& name, std::vector<Requirement> needs) {
  MachineClass made{name, 1, {}, {}, {}, {}, {}};
  for (std::size_t i = 0; i < needs.size(); ++i)
    made.gates.push_back({name + std::to_string(i), Rung::independent, std::move(needs[i]), {}});
  return made;
}

NeedCheckout checkout() {
  NeedCheckout need;
  need.checkout = "saw";
  return need;
}

/// On the saw, whoever was independent by the rules up to `from` stays so; nobody else becomes it.
Rulebook spares_from(const Shop& shop, Instant from) {
  Rulebook later = shop.rulebooks[0];
  later.version = 2;
  later.effective_from = later.recorded = from;
  later.classes[0] = machine("saw", {{NeedAge{60}}});
  later.classes[0].gates[0].existing_until = first + 900;
  return later;
}

}  // namespace

TEST_CASE("there is no way past a failed check-out in the first second without an assessor",
          "[decide][route]") {
  Shop shop = shop_asking({NeedAllOf{{{checkout()}, {NeedAge{18}}}}});
  turns(shop, 18, first + 10);
  shop.records[0].fact = Appoint{"bo", Everything{}, true, first + 4};
  const Instant ends = start + 5 * a_day;
  Shop later = shop;
  // The last check-out that bo can assess is made in the second in which his appointment ends.
  add(shop, "failed", ends, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
  CHECK(route_of(shop, start + 60).reaches == start + 10 * a_day);
  add(later, "failed", ends + 1, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
  CHECK_FALSE(route_of(later, start + 60).reaches);
}

TEST_CASE("a check-out dated ahead does not count whose assessor is appointed in that second",
          "[decide][route]") {
  NeedLesson lesson;
  lesson.lesson = "guards";
  NeedCheckout need = checkout();
  need.given = {{lesson}};
  Shop shop = shop_asking({need});
  const Instant appointed = start + 10 * a_day;
  shop.records.clear();
  add(shop, "appointed", appointed, Appoint{"bo", Everything{}, true, {}});
  add(shop, "ahead", appointed, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  const Route route = route_of(shop, start + 60);
  CHECK(route.reaches == appointed + 1);
  CHECK(route.steps.size() == 2);
  // A second later that check-out is one step of the way.
  shop.records[1].at = appointed + 1;
  const Route with_it = route_of(shop, start + 60);
  CHECK(with_it.reaches == appointed + 1);
  CHECK(with_it.steps.size() == 1);
}

TEST_CASE("who becomes independent may use the machine a second later", "[decide][route]") {
  NeedLesson lesson;
  lesson.lesson = "guards";
  Shop shop = shop_asking({lesson});
  shop.people = {"ana"};
  shop.records.clear();
  shop.rulebooks[0].classes.push_back(
      machine("mill", {{NeedRecentUse{"saw", 1, Period{PeriodUnit::days, 30}}}}));
  const Route route = route_of(shop, start + 60, "mill");
  CHECK(route.reaches == start + 61);
  REQUIRE(route.steps.size() == 2);
  CHECK(route.steps[0].at == start + 60);
  CHECK(route.steps[1].fact == Fact{Use{"ana", "saw"}});
}

TEST_CASE("minutes that sessions cannot share evenly are rounded up", "[decide][route]") {
  NeedPractice need;
  need.minutes = 2 * 1440 + 1;  // a record holds a day at most
  const Route route = route_of(shop_asking({need}), start + 60);
  REQUIRE(route.steps.size() == 3);
  for (const Record& step : route.steps) CHECK(std::get<Supervised>(step.fact).minutes == 961);
}

TEST_CASE("what spares one no longer spares in the second in which it ends", "[decide][route]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  Rulebook later = shop.rulebooks[0];
  later.version = 2;
  later.effective_from = later.recorded = start + a_day;
  later.classes[0] = machine("saw", {{NeedDocument{"waiver", {}, {}}}, {NeedAge{18}}});
  later.classes[0].gates[0].existing_until = first + 9;
  shop.rulebooks[0].classes[0].gates.clear();
  shop.rulebooks.push_back(later);
  turns(shop, 18, first + 10);
  const Route late = route_of(shop, start + 2 * a_day);
  CHECK(late.reaches == start + 10 * a_day);
  CHECK(late.steps.size() == 1);
  shop.records.pop_back();
  turns(shop, 18, first + 9);
  CHECK(route_of(shop, start + 2 * a_day).steps.empty());
}

TEST_CASE("what is done in the last second of a rulebook spares from the next one", "[decide][route]") {
  NeedLesson lesson;
  lesson.lesson = "guards";
  Shop shop = shop_asking({lesson});
  shop.rulebooks[0].classes.push_back(
      machine("mill", {{NeedStanding{"saw", Rung::independent}}, {NeedAge{18}}}));
  turns(shop, 18, first + 30);
  const Instant changes = start + 12 * a_day;
  shop.rulebooks.push_back(spares_from(shop, changes));
  const Route route = route_of(shop, changes - 1, "mill");
  CHECK(route.reaches == start + 30 * a_day);
  REQUIRE(route.steps.size() == 1);
  CHECK(route.steps[0].at == changes - 1);
  CHECK(*route_of(shop, changes, "mill").reaches > start + 10000 * a_day);  // at sixty
}

TEST_CASE("a session is put off to the last second in which it can be supervised", "[decide][route]") {
  // Only a session in that second still covers the last second of the rules up to then.
  NeedPractice practice;
  practice.sessions = 1;
  practice.within = Period{PeriodUnit::days, 10};
  Shop shop = shop_asking({practice});
  shop.rulebooks[0].classes.push_back(
      machine("mill", {{NeedStanding{"saw", Rung::independent}}, {NeedAge{18}}}));
  turns(shop, 18, first + 30);
  shop.rulebooks.push_back(spares_from(shop, start + 17 * a_day));
  shop.records[0].fact = Appoint{"bo", Everything{}, true, first + 5};
  add(shop, "again", start + 20 * a_day, Appoint{"bo", Everything{}, true, {}});
  const Route route = route_of(shop, start + 60, "mill");
  CHECK(route.reaches == start + 30 * a_day);
  REQUIRE(route.steps.size() == 1);
  CHECK(route.steps[0].at == start + 6 * a_day);
}
