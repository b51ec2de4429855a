// A command that comes again: the same is entered once, another under its id is refused.
#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

Person noor() {
  Person person;
  person.given = "Noor";
  person.number = "77";
  return person;
}

SignCheckout signing() {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.marks = {Mark::shown, Mark::shown_when_asked};
  sign.restrictions = {"no resawing"};
  sign.booking = "booked";
  return sign;
}

struct Pair {
  std::string what;
  PersonId by;
  Action action, other;
};

std::vector<Pair> pairs() {
  SignCheckout failed = signing(), marked = signing(), open = signing();
  failed.checkout.outcome = Outcome::failed;
  marked.marks[0] = Mark::not_shown;
  open.restrictions = {"no resawing", "no dado"};
  EnterPerson older{noor(), Day{9000}}, unborn{noor(), std::nullopt}, named{noor(), Day{9000}};
  older.born = Day{8999};
  named.person.given = "Nour";
  Person kim;
  kim.id = "kim";
  kim.given = "Kimberly";
  Person kimmy = kim;
  kimmy.given = "Kimmy";
  Rulebook book = small_rulebook(2, evening + day), stricter = book;
  stricter.classes[0].tier = 1;
  return {{"a person's birth date", "dee", EnterPerson{noor(), Day{9000}}, older},
          {"a person without it", "dee", EnterPerson{noor(), Day{9000}}, unborn},
          {"a person with it after all", "dee", unborn, EnterPerson{noor(), Day{9000}}},
          {"a person's name", "dee", EnterPerson{noor(), Day{9000}}, named},
          {"a correction", "dee", CorrectPerson{kim}, CorrectPerson{kimmy}},
          {"who is blanked", "mia", BlankPerson{"kim"}, BlankPerson{"lou"}},
          {"a PIN", "dee", ChoosePin{"dee", "4444"}, ChoosePin{"dee", "4445"}},
          {"whose PIN", "mia", ChoosePin{"kim", "4444"}, ChoosePin{"lou", "4444"}},
          {"a fact", "dee", fact(Document{"kim", "induction", {}}), fact(Document{"lou", "induction", {}})},
          {"the kind of a fact", "dee", fact(Lesson{"kim", "guards", 1}), own(Presence{"kim"})},
          {"a fact of the shop's own", "dee", own(Presence{"kim"}), own(Presence{"kim", false})},
          {"a result", "ivo", signing(), failed},
          {"a mark", "ivo", signing(), marked},
          {"a restriction", "ivo", signing(), open},
          {"a tag", "dee", PutOutOfService{"b1", "7", "3", "blade", "dee"},
           PutOutOfService{"b1", "8", "3", "blade", "dee"}},
          {"who started a machine", "dee", own(Started{"ivo", "s1", "sander", ""}),
           own(Started{"mia", "s1", "sander", ""})},
          {"a part in what happened", "ivo",
           RecordIncident{"bandsaw", "b1", 2, {{"kim", Part::hurt}}, {}, "the blade jumped off"},
           RecordIncident{"bandsaw", "b1", 2, {{"kim", Part::saw}}, {}, "the blade jumped off"}},
          {"what happened", "ivo", RecordIncident{"bandsaw", "b1", 4, {}, {}, "a board kicked back"},
           RecordIncident{"bandsaw", "b1", 4, {}, {}, "a board fell down"}},
          {"a rulebook", "mia", PublishRulebook{book}, PublishRulebook{stricter}},
          {"a reason", "dee", StrikeOutRecord{"came", "it was lou"}, StrikeOutRecord{"came", "it was mia"}}};
}

}  // namespace

TEST_CASE("Another command under an id that was entered is refused, the same is not entered again") {
  TestShop prepared;
  Command before = prepared.command(
      "dee", own(Booking{"kim", "ivo", "b1", "bandsaw", evening + hour, evening + 2 * hour}));
  before.id = "booked";
  REQUIRE(prepared.store().commit(before));
  before = prepared.command("dee", own(Presence{"kim"}));
  before.id = "came";
  REQUIRE(prepared.store().commit(before));
  prepared.close();
  for (const Pair& pair : pairs()) {
    INFO(pair.what);
    TestShop shop = prepared.copy();
    Command command = shop.command(pair.by, pair.action);
    const auto done = shop.store().commit(command);
    if (!done) UNSCOPED_INFO(done.error().what);
    REQUIRE(done);
    const auto entries = shop.store().entries();
    if (GENERATE(false, true)) shop.reopen();
    Command other = command;
    other.action = pair.other;
    const auto refused = shop.store().commit(other);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().where == "id");
    CHECK_THAT(refused.error().what, Catch::Contains("'" + command.id + "'"));
    CHECK(shop.store().entries() == entries);
    const auto again = shop.store().commit(command);
    if (!again) UNSCOPED_INFO(again.error().what);
    REQUIRE(again);
    CHECK(again->again);
    CHECK(again->number == done->number);
  }
}

TEST_CASE("When, by whom, and the note of a command are part of it") {
  TestShop shop;
  Command command = shop.command("dee", fact(Document{"kim", "induction", {}}), evening - 60);
  command.note = "signed";
  REQUIRE(shop.store().commit(command));
  Command other = command;
  SECTION("when") { other.at = evening - 61; }
  SECTION("by whom") { other.by = "mia"; }
  SECTION("the note") { other.note = "not signed"; }
  SECTION("no note") { other.note = ""; }
  SECTION("from where") { other.quiz_station = true; }
  CHECK_FALSE(shop.store().commit(other));
  CHECK(shop.store().commit(command)->again);
}

TEST_CASE("A note beside an entry that was made without one is another command") {
  TestShop shop;
  Command command = shop.command("dee", fact(Document{"kim", "induction", {}}));
  REQUIRE(shop.store().commit(command));
  command.note = "signed";
  CHECK_FALSE(shop.store().commit(command));
}

TEST_CASE("What was corrected or blanked since does not make a command another") {
  TestShop shop;
  Command enter = shop.command("dee", EnterPerson{noor(), Day{9000}});
  const auto entered = shop.store().commit(enter);
  REQUIRE(entered);
  Command pin = shop.command("mia", ChoosePin{entered->person, "4444"});
  REQUIRE(shop.store().commit(pin));
  Command note = shop.command("dee", fact(Document{entered->person, "induction", {}}));
  note.note = "signed";
  REQUIRE(shop.store().commit(note));
  const auto all_again = [&] {
    for (const Command& command : {enter, pin, note}) {
      const auto again = shop.store().commit(command);
      if (!again) UNSCOPED_INFO(again.error().what);
      CHECK(again);
    }
  };
  Person married = noor();
  married.id = entered->person;
  married.family = "Tansy";
  shop.enter("dee", CorrectPerson{married});
  shop.enter("mia", ChoosePin{married.id, "5555"});
  all_again();
  shop.enter("mia", BlankPerson{married.id});
  all_again();
}
