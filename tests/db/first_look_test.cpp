// One person's answers before the whole file is read are the answers of the store.
#include <rapidcheck/catch.h>

#include <algorithm>
#include <catch2/catch.hpp>

#include "db/demo.h"
#include "db/first_look.h"
#include "db/journal/some_rows.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

FirstLook look_at(const std::string& path, const Store::Clock& clock) {
  auto look = FirstLook::open(path, clock);
  if (!look) FAIL(look.error().what);
  return std::move(*look);
}

/// Whole answers of today and every rung over ten years.
void same_for(const PersonId& person, Decider& one, Decider& all, Instant now) {
  const PersonId& id = person;
  for (const TargetName& target : all.targets()) {
    INFO(id << " on " << target);
    CHECK(one.standing(id, target, now) == all.standing(id, target, now));
    CHECK(one.standing_steps(id, target) == all.standing_steps(id, target));
    CHECK(one.able_to_assess(id, target, now) == all.able_to_assess(id, target, now));
  }
}

}  // namespace

TEST_CASE("A first look says of everybody in the demo shop what the store says", "[file]") {
  make_application();
  QTemporaryDir folder;
  const std::string path = folder.filePath("demo").toStdString();
  const auto clock = [] { return evening + 300 * day; };
  const auto store = make_demo(path, clock, cheap_pins());
  REQUIRE(store);
  FirstLook look = look_at(path, clock);
  CHECK(look.people() == store->people());
  CHECK(look.now() == store->now());
  Decider all(store->shop());
  std::size_t asked = 0;
  for (const Person& person : store->people()) {
    const PersonId id = store->joined(person.id);
    CHECK(look.joined(person.id) == id);
    const auto answers = look.answers_for(person.id);
    REQUIRE(answers);
    CHECK(answers->decider->targets() == all.targets());
    // Each once and in order, though some are read as the shop's and as the person's too.
    CHECK(std::ranges::adjacent_find(*answers->entries, std::ranges::greater_equal{}, &Entry::order) ==
          answers->entries->end());
    same_for(id, *answers->decider, all, store->now());
    ++asked;
    // A new look each: what was read for somebody else must not help.
    if (asked % 10 == 0) look = look_at(path, clock);
  }
  CHECK(asked > 50);
}

TEST_CASE("A first look follows joins, strike-outs, ends and erasures") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  shop.wait(60);
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  signing.pin = "2222";
  const RecordId checkout = shop.enter("ivo", signing);
  shop.wait(60);
  const auto compare = [&] {
    FirstLook look = look_at(shop.path(), shop.clock());
    Decider all(shop.store().shop());
    for (const Person& person : shop.store().people())
      same_for(shop.store().joined(person.id), *look.answers_for(person.id)->decider, all, shop.now());
  };
  compare();
  const RecordId pause = shop.enter("mia", fact(Suspend{"ivo", Everything{}, std::nullopt}));
  compare();
  shop.wait(60);
  shop.enter("mia", fact(Reinstate{pause}));
  compare();
  shop.enter("mia", own(Join{"lou", "kim"}));
  compare();
  shop.enter("mia", StrikeOutRecord{checkout, "by mistake"});
  compare();
  shop.enter("mia", BlankPerson{"kim"});
  compare();
}

TEST_CASE("A file of an earlier version is no business of a first look", "[file]") {
  TestShop shop;
  shop.close();
  by_sqlite3(shop.path(), "PRAGMA user_version = 4");
  const auto look = FirstLook::open(shop.path(), shop.clock());
  REQUIRE_FALSE(look);
  CHECK_THAT(look.error().what, Catch::Contains("earlier version"));
}

TEST_CASE("A store opened with what was read ahead is the store, with what was entered meanwhile") {
  TestShop shop;
  auto ahead = ReadAhead::read(shop.path(), cheap_pins());
  REQUIRE(ahead);
  shop.enter("dee", own(Presence{"kim"}));
  const bool erased = GENERATE(false, true);
  if (erased) shop.enter("mia", BlankPerson{"lou"});
  auto opened = Store::open(shop.path(), shop.clock(), cheap_pins(), std::move(*ahead));
  REQUIRE(opened);
  CHECK(opened->entries() == shop.store().entries());
  CHECK(opened->people() == shop.store().people());
  CHECK(opened->last_commit() == shop.store().last_commit());
  Decider& one = opened->current().decider();
  Decider all(shop.store().shop());
  for (const Person& person : shop.store().people()) same_for(person.id, one, all, shop.now());
  REQUIRE(opened->commit(shop.command("dee", own(Presence{"kim", false}))));
}

TEST_CASE("What is about the whole shop is found by its index, not by looking through every record",
          "[file]") {
  const TestShop shop;
  const QString plan = by_sqlite3(shop.path(), QString("EXPLAIN QUERY PLAN ") + shop_wide_query);
  INFO(plan.toStdString());
  CHECK(plan.contains("USING INDEX records_of_shop"));
  CHECK_FALSE(plan.contains("SCAN r"));
  const QString call = by_sqlite3(shop.path(), QString("EXPLAIN QUERY PLAN ") + emergency_call_query);
  INFO(call.toStdString());
  CHECK(call.contains("USING INDEX records_of_emergency_call"));
}

TEST_CASE(
    "A first look says what to call as the store does: what was entered last, less what was struck out") {
  TestShop shop;
  CHECK(look_at(shop.path(), shop.clock()).emergency_call() == EmergencyCall{});
  shop.enter("mia", own(EmergencyCall{"112", "Mill Road 12"}));
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  const EmergencyCall second{"0-112", "Mill Road 12, by the yard"};
  const RecordId wrong = shop.enter("mia", own(second));
  CHECK(look_at(shop.path(), shop.clock()).emergency_call() == second);
  CHECK(shop.store().emergency_call() == second);
  // What else it answers does not suffer.
  FirstLook look = look_at(shop.path(), shop.clock());
  Decider all(shop.store().shop());
  same_for("kim", *look.answers_for("kim")->decider, all, shop.now());
  shop.enter("mia", StrikeOutRecord{wrong, "nobody dials 0 here"});
  CHECK(look_at(shop.path(), shop.clock()).emergency_call() == EmergencyCall{"112", "Mill Road 12"});
  CHECK(shop.store().emergency_call() == EmergencyCall{"112", "Mill Road 12"});
}
