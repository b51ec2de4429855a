// A shop in another place says the same of everybody, byte for byte.
#include "db/move.h"

#include <QFile>
#include <catch2/catch.hpp>

#include "db/export/person_export.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// All that a store says of everybody, as it would be written down.
std::string said_of_all(Store& store) {
  std::string all;
  const Instant t = store.now();
  Decider& decider = store.current().decider();
  const Rulebook* rulebook = decider.in_force(t);
  for (const Person& person : store.people()) {
    all +=
        store.joined(person.id) + " " + person.number + " " + export_person(store, person.id).value() + "\n";
    for (const TargetName& target : rulebook == nullptr ? std::vector<TargetName>() : targets_of(*rulebook)) {
      const StandingAnswer answer = decider.standing(store.joined(person.id), target, t);
      all += target + " " + std::string(word(answer.standing));
      for (const GateAnswer& gate : answer.gates) all += " " + gate.id + std::string(word(gate.state));
      all += "\n";
    }
  }
  return all;
}

TestShop lived_in() {
  TestShop shop;
  shop.wait(60);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  Command noted = shop.command("dee", fact(Document{"lou", "Einführung für José \"x\\y\" 木工", Day{21000}}));
  noted.note = "asked for an interpreter; 'quoted', \\ and ☃";
  REQUIRE(shop.store().commit(noted));
  const RecordId booking =
      shop.enter("dee", own(Booking{"kim", "ivo", "b1", "bandsaw", shop.now() + 3600, shop.now() + 7200}));
  shop.enter("dee", own(Cancel{booking, "ill"}));
  shop.enter("dee", own(Booking{"kim", "ivo", "b1", "bandsaw", shop.now() + day, shop.now() + day + hour}));
  Booking held{"lou", "mia", "b2", "bandsaw", shop.now() + day, shop.now() + day + hour};
  held.held_through = shop.now() + hour;
  shop.enter("dee", own(held));
  shop.enter("mia", StrikeOutRecord{"past-19", "published by mistake"});
  shop.enter("mia", BlankPerson{"lou"});
  return shop;
}

}  // namespace

TEST_CASE("A shop that was moved, and moved back, says the same of everybody under the same root") {
  TestShop shop = lived_in();
  const auto head = shop.store().head().value();
  const auto entries = shop.store().entries();
  const auto people = shop.store().people();
  const std::string said = said_of_all(shop.store());
  REQUIRE(said.size() > 2000);
  shop.close();

  QTemporaryDir folder;
  const std::string file = folder.filePath("moved.wm").toStdString();
  const TestPlace third;
  REQUIRE(move_store(shop.path(), file, cheap_pins()) == head);
  REQUIRE(move_store(file, third.name(), cheap_pins()) == head);
  for (const std::string& place : {shop.path(), file, third.name()}) {
    auto store = Store::open(place, shop.clock(), cheap_pins());
    REQUIRE(store);
    CHECK(store->entries() == entries);
    CHECK(store->people() == people);
    CHECK(store->head() == head);
    CHECK(store->sit_down("ivo", "2222") == Role::instructor);
    CHECK(said_of_all(*store) == said);
  }
  CHECK(verify::look_through(file, {}).value().findings.empty());
  SECTION("and goes on from there") {
    auto store = Store::open(third.name(), shop.clock(), cheap_pins());
    REQUIRE(store);
    CHECK(store->commit(shop.command(
        "dee", own(Booking{"kim", "ivo", "b1", "bandsaw", shop.now() + 3600, shop.now() + 7200}))));
  }
}

TEST_CASE("A shop is not moved onto another, nor where its leaves are not what its ledger says") {
  TestShop shop, other;
  const auto entries = other.store().entries();
  const auto onto = move_store(shop.path(), other.path(), cheap_pins());
  REQUIRE_FALSE(onto);
  CHECK_THAT(onto.error().what, Catch::Contains("already"));
  other.reopen();
  CHECK(other.store().entries() == entries);
}

TEST_CASE("A shop whose record was altered is not moved, and nothing is left of it", "[file]") {
  TestShop shop;
  shop.close();
  by_sqlite3(shop.path(),
             "DROP TRIGGER records_update; UPDATE records SET leaf = replace(leaf, 'guards', 'gaards')");
  QTemporaryDir folder;
  const std::string file = folder.filePath("moved.wm").toStdString();
  const auto moved = move_store(shop.path(), file, cheap_pins());
  REQUIRE_FALSE(moved);
  CHECK_THAT(moved.error().what, Catch::Contains("damaged"));
  CHECK_FALSE(QFile::exists(QString::fromStdString(file)));
}
