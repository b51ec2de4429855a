// A pasted list of names: who is here already, who is new, and what is wrong with which line.
#include "db/group_plan.h"

#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

GroupForm names(const std::string& list) { return {list, "guards", 1, "", {}, {"ivo"}}; }

std::string wrong(TestShop& shop, const std::string& list) {
  const GroupPlan plan = plan_group(shop.store(), names(list));
  CHECK(plan.actions.empty());
  for (const GroupLine& line : plan.lines)
    if (line.problem) return line.problem->where + ": " + line.problem->what;
  return "";
}

Expected<Committed> enter(TestShop& shop, const GroupPlan& plan) {
  std::vector<Command> commands;
  for (const Action& action : plan.actions) commands.push_back(shop.command("dee", action));
  return shop.store().commit_all(commands);
}

}  // namespace

TEST_CASE("A name is found however it is written, and whoever is not here is entered") {
  TestShop shop;
  const GroupPlan plan = plan_group(
      shop.store(), names("Kim Abara\n\n  brandt,  LOU \r\nNoor Tamsin 0071\n3\nInès de la Cruz\n"));
  REQUIRE(plan.lines.size() == 5);
  CHECK(plan.found == 3);
  CHECK(plan.entered == 2);
  CHECK(plan.bad == 0);
  CHECK(plan.lines[0].person.id == "kim");
  CHECK(plan.lines[1].person.id == "lou");
  CHECK(plan.lines[1].line == 3);
  CHECK(plan.lines[2].fate == LineFate::entered);
  CHECK(plan.lines[2].person.given == "Noor");
  CHECK(plan.lines[2].person.number == "0071");
  CHECK(plan.lines[3].person.id == "dee");  // by the number alone
  CHECK(plan.lines[4].person.given == "Inès de la");
  CHECK(plan.lines[4].person.id != plan.lines[2].person.id);
  REQUIRE(enter(shop, plan));
  shop.wait(1);
  for (const GroupLine& line : plan.lines)
    CHECK(shop.store().current().rung(line.person.id, "bandsaw", shop.now()) == Rung::supervised);
  const GroupPlan again = plan_group(shop.store(), names("noor tamsin\nInes de la Cruz"));
  CHECK(again.found == 2);
  CHECK(again.lines[0].had_lesson);
  CHECK(again.lines[0].person.id == plan.lines[2].person.id);
}

TEST_CASE("What is wrong with a line is said by its number, and then nothing is entered") {
  TestShop shop;
  CHECK(wrong(shop, "Kim Abara\nKim") ==
        "line 2: Nobody here is called that, and one name alone is not entered.");
  CHECK(wrong(shop, "77") == "line 1: Nobody has the number 77.");
  CHECK(wrong(shop, "Lou Brandt 4") == "line 1: The number 4 is that of Kim Abara.");
  CHECK(wrong(shop, "Kim Abara\n\n4") == "line 3: This is the same person as in line 1.");
  CHECK(wrong(shop, "Noor Tamsin\nTamsin, Noor") == "line 2: This is the same person as in line 1.");
  Person twin;
  twin.id = "kim2";
  twin.given = "Kim";
  twin.family = "Abara";
  twin.number = "44";
  shop.enter("dee", EnterPerson{twin, {}});
  CHECK(wrong(shop, "Kim Abara") == "line 1: 2 people are called that: 4, 44.");
  CHECK(plan_group(shop.store(), names("Kim Abara 44")).lines[0].person.id == "kim2");
  CHECK(plan_group(shop.store(), names("044")).lines[0].person.id == "kim2");
  // Two entries of one person are one.
  shop.enter("mia", own(Join{"kim", "kim2"}));
  CHECK(plan_group(shop.store(), names("Kim Abara")).lines[0].person.id == "kim");
  CHECK(plan_group(shop.store(), names("44")).lines[0].person.id == "kim");
  CHECK(plan_group(shop.store(), names(" \n")).actions.empty());
}

TEST_CASE("A known name beside a number that nobody has is no second person, unless that is said") {
  TestShop shop;
  CHECK(wrong(shop, "Kim Abara 0421") ==
        "line 1: Nobody has the number 0421. Kim Abara is here already, with the number 4.");
  CHECK(wrong(shop, "abara, KIM 0421").find("with the number 4.") != std::string::npos);
  const GroupPlan plan = plan_group(shop.store(), names("+ Kim Abara 0421\n+Lou Brandt\nLou Brandt"));
  REQUIRE(plan.actions.size() == 3);
  CHECK(plan.entered == 2);
  CHECK(plan.lines[0].another);
  CHECK(plan.lines[0].person.number == "0421");
  CHECK(plan.lines[0].person.id != "kim");
  CHECK(plan.lines[1].person.id != "lou");
  CHECK(plan.lines[2].person.id == "lou");
  CHECK(wrong(shop, "+ Kim Abara 4") == "line 1: The number 4 is that of Kim Abara.");
  // Two of one name who are both new are two where that is said.
  CHECK(wrong(shop, "Noor Tamsin\nNoor Tamsin") == "line 2: This is the same person as in line 1.");
  CHECK(plan_group(shop.store(), names("Noor Tamsin\n+ Noor Tamsin")).entered == 2);
  REQUIRE(enter(shop, plan));
  CHECK(wrong(shop, "Kim Abara 99") ==
        "line 1: Nobody has the number 99. 2 people are called that: 4, 0421.");
  CHECK(wrong(shop, "Lou Brandt 99").find("5, without a number") != std::string::npos);
}

TEST_CASE("Each gets the paper too, and how many there may be is said beforehand") {
  TestShop shop;
  Rulebook rulebook = small_rulebook(2, shop.now());
  rulebook.learners_to_one = 6;
  shop.enter("mia", PublishRulebook{rulebook});
  GroupForm form = names("Kim Abara\nNoor Tamsin");
  form.document = "induction";
  form.instructors = {"ivo", "mia"};
  const GroupPlan plan = plan_group(shop.store(), form);
  CHECK(plan.most == 12);
  REQUIRE(plan.actions.size() == 4);  // a person, two papers, the group
  REQUIRE(enter(shop, plan));
  CHECK(shop.store().of_kind("document").size() == 2);
  CHECK(shop.store().of_kind("group_taught").size() == 1);
}
