#include "db/demo.h"

#include <QTemporaryDir>
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "core/decide/decider.h"
#include "core/passes/json.h"
#include "core/passes/plane.h"
#include "core/rulebook/json.h"
#include "core/time/text.h"
#include "db/journal/subject.h"
#include "tests/db/test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// Made once: all tests here only read it.
struct Demo {
  QTemporaryDir dir;
  Store store = made();
  Shop shop = store.shop();
  Decider decider{shop};
  Instant now = store.now();

  Store made() {
    make_application();
    auto made = make_demo(
        dir.filePath("demo.wm").toStdString(), [] { return Instant{1800000000}; }, cheap_pins());
    if (!made) UNSCOPED_INFO(made.error().where << ": " << made.error().what);
    REQUIRE(made);
    return std::move(*made);
  }
  StandingAnswer standing(const char* person, const char* target) {
    return decider.standing(person, target, now);
  }
};

Demo& demo() {
  static Demo made;
  return made;
}

std::vector<std::string> unmet(const StandingAnswer& answer) {
  std::vector<std::string> ids;
  for (const GateAnswer& gate : answer.gates)
    if (gate.state == GateState::unmet) ids.push_back(gate.id);
  return ids;
}

Instant at(const char* text) { return *parse_instant(text); }

}  // namespace

TEST_CASE(
    "Every quiz that the demo's rulebook asks for can be sat: its published revision is issued, with "
    "pictures") {
  std::set<std::string> asked;
  const auto look = [&asked](const Gate& gate) {
    if (const auto* quiz = std::get_if<NeedQuiz>(&gate.need.need)) asked.insert(quiz->quiz);
  };
  const Rulebook& book = *demo().decider.in_force(demo().now);
  for (const Tier& tier : book.tiers) std::for_each(tier.gates.begin(), tier.gates.end(), look);
  REQUIRE(asked.size() == 4);
  for (const std::string& quiz : asked) {
    INFO(quiz);
    int published = 0, issued = 0;
    for (const Entry& entry : demo().store.entries()) {
      const auto* publish = db::as<Publish>(entry.fact);
      if (publish && publish->item == quiz) published = std::max(published, publish->revision);
      const auto* bank = db::as<Issued>(entry.fact);
      if (bank && bank->name == quiz) issued = std::max(issued, bank->revision);
    }
    CHECK(published > 0);
    CHECK(issued == published);
  }
}

TEST_CASE("The demo shop is made on the evening of its day, with its people, classes and units") {
  CHECK(to_text(demo().now) == "2026-11-25T22:40:00Z");
  CHECK(demo().store.people().size() == 120);
  REQUIRE(demo().decider.in_force(demo().now));
  CHECK(demo().decider.in_force(demo().now)->classes.size() == 20);
  CHECK(demo().decider.in_force(demo().now)->tiers.size() == 4);
  CHECK(demo().shop.machines.size() == 37);
  CHECK(demo().store.entries().size() > 6000);
}

TEST_CASE("Its staff sit down with the PIN of the README") {
  const auto role = demo().store.sit_down("p0001", "2468");
  REQUIRE(role);
  CHECK(*role == Role::manager);
  CHECK(demo().store.sit_down("p0007", "2468").value() == Role::instructor);
  CHECK(demo().store.sit_down("p0044", "2468").value() == Role::desk);
  CHECK_FALSE(demo().store.sit_down("p0015", "2468"));
}

TEST_CASE("Jonas lacks one check-out on the jointer/planer, in both modes") {
  for (const char* target : {"jointer-planer/jointing", "jointer-planer/planing"}) {
    const StandingAnswer answer = demo().standing("p0412", target);
    CHECK(answer.standing == Rung::supervised);
    CHECK(unmet(answer) == std::vector<std::string>{"jointer-planer-checkout"});
    // His quiz of 23 January counts twelve months: through 23 January 2027 in Chicago.
    CHECK(answer.until == at("2027-01-24T06:00:00Z"));
    CHECK(demo().decider.assessors(target, demo().now) == std::vector<PersonId>{"p0007", "p0011"});
  }
}

TEST_CASE("Wren turns eighteen on 19 December and may then joint with a supervisor") {
  const StandingAnswer answer = demo().standing("p0366", "jointer-planer/jointing");
  CHECK(answer.standing == Rung::barred);
  CHECK(answer.until == at("2026-12-19T06:00:00Z"));
  CHECK(answer.next == Rung::supervised);
}

TEST_CASE("Leap, born on 29 February 2008, came of age on 1 March 2026") {
  const StandingAnswer answer = demo().standing("p0374", "jointer-planer/jointing");
  CHECK(answer.standing == Rung::supervised);
  const auto age =
      std::find_if(answer.gates.begin(), answer.gates.end(), [](const auto& g) { return g.id == "t3-age"; });
  REQUIRE(age != answer.gates.end());
  CHECK(age->reason.since == at("2026-03-01T06:00:00Z"));
}

TEST_CASE("Unit 1 of the jointer/planer is out of service, unit 2 is not") {
  const std::vector<PersonId> present{"p0007"};
  const auto may = [&](const char* unit) {
    return demo().decider.may_start("p0412", unit, "jointing", demo().now, true, present, {});
  };
  CHECK(may("jointer-planer-1").because == std::vector<Hindrance>{Hindrance::locked_out});
  CHECK(may("jointer-planer-2").may);
}

TEST_CASE("What Anneke did under her second number counts since the two were joined") {
  CHECK(demo().standing("p0388", "bandsaw").standing == Rung::independent);
  CHECK(demo().store.joined("p0455") == "p0388");
}

TEST_CASE("Rasheed is paused on tier 2 to the end of the year, and on nothing else") {
  const StandingAnswer answer = demo().standing("p0359", "bandsaw");
  CHECK(answer.standing == Rung::barred);
  CHECK(answer.suspensions.size() == 1);
  CHECK(answer.until == at("2027-01-01T06:00:00Z"));
  CHECK(demo().standing("p0359", "hand tools").standing == Rung::independent);
}

TEST_CASE("A check-out counts from before its assessor was dismissed, not from after") {
  CHECK(demo().standing("p0280", "bandsaw").standing == Rung::independent);
  CHECK(unmet(demo().standing("p0280", "mitre saw")) == std::vector<std::string>{"mitre-saw-checkout"});
}

TEST_CASE("Every machine has somebody who can assess it, and standings of every kind") {
  int in_grace = 0, falling = 0;
  std::map<int, std::set<PersonId>> unsupervised;
  const Rulebook& book = *demo().decider.in_force(demo().now);
  for (const TargetName& target : targets_of(book)) {
    INFO(target);
    CHECK_FALSE(demo().decider.assessors(target, demo().now).empty());
    for (const PersonId& person : demo().shop.people) {
      const StandingAnswer answer = demo().decider.standing(person, target, demo().now);
      if (answer.standing == Rung::independent)
        unsupervised[find_class(book, class_of(target))->tier].insert(person);
      falling += answer.next && *answer.next < answer.standing && *answer.until < demo().now + 60 * 86400;
      for (const GateAnswer& gate : answer.gates) in_grace += gate.state == GateState::in_grace;
    }
  }
  CHECK(unsupervised[1].size() > 80);
  CHECK(unsupervised[2].size() > 30);
  CHECK(unsupervised[3].size() > 8);
  CHECK(unsupervised[4].size() > 2);
  CHECK(in_grace > 5);
  CHECK(falling > 20);
}

TEST_CASE("The demo's combination has a card for each mode, by which an inch and a half becomes an inch") {
  const Issued *planing = nullptr, *jointing = nullptr;
  for (const Entry& entry : demo().store.entries())
    if (const auto* issued = as<Issued>(entry.fact); issued != nullptr && issued->work == Work::card)
      (issued->name == "jointer-planer/planing" ? planing : jointing) = issued;
  REQUIRE(planing != nullptr);
  REQUIRE(jointing != nullptr);
  CHECK(jointing->name == "jointer-planer/jointing");
  CHECK(mistakes_in(read_jointer_card(jointing->text).value()).empty());
  const PlanerCard card = read_planer_card(planing->text).value();
  const auto plan =
      plan_passes(card, {inches(24), inches(6), inches(3, 2), inches(0), inches(1), inches(1, 1000)});
  REQUIRE(plan);
  CHECK(plan->floor == 4);
  CHECK(plan->deepest / card.wheel.turn == fraction(4, 5));
  CHECK_FALSE(plan_passes(card, {inches(5), inches(6), inches(3, 2), inches(0), inches(1), inches(1, 1000)}));
  for (const Issued* each : {planing, jointing}) CHECK(each->changed.find("invented") != std::string::npos);
}

TEST_CASE("Each of the demo's lessons has the text of the revision that counts") {
  const Rulebook& book = *demo().decider.in_force(demo().now);
  std::map<std::string, int> published, issued;
  for (const Entry& entry : demo().store.entries()) {
    if (const auto* p = as<Publish>(entry.fact))
      published[p->item] = std::max(published[p->item], p->revision);
    if (const auto* i = as<Issued>(entry.fact); i != nullptr && i->work == Work::lesson)
      issued[i->name] = i->revision;
  }
  CHECK(issued.size() == 9);
  for (const auto& [name, revision] : issued) {
    INFO(name);
    CHECK(revision == published[name]);
    CHECK(to_json(book).find("\"" + name + "\"") != std::string::npos);
  }
}
