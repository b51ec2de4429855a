// How commits are numbered, dated, repeated and undone.
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

TEST_CASE("The same command twice is entered once") {
  TestShop shop;
  const Command command = shop.command("dee", fact(Document{"kim", "induction", {}}));
  const auto first = shop.store().commit(command);
  const auto second = shop.store().commit(command);
  REQUIRE(first);
  REQUIRE(second);
  CHECK_FALSE(first->again);
  CHECK(second->again);
  CHECK(first->entries == second->entries);
  CHECK(first->number == second->number);
  shop.reopen();
  const auto third = shop.store().commit(command);
  REQUIRE(third);
  CHECK(third->again);
  CHECK(third->entries == first->entries);
}

TEST_CASE("A clock that runs back does not take `recorded` with it") {
  TestShop shop;
  shop.enter("dee", own(Presence{"kim"}));
  shop.set_now(evening - hour / 2);
  shop.enter("dee", own(Presence{"lou"}));
  const auto& entries = shop.store().entries();
  CHECK(entries.back().recorded == evening);
  CHECK(entries.back().at == evening);
  shop.set_now(evening + 5);
  shop.enter("dee", own(Presence{"lou", false}));
  CHECK(entries.back().recorded == evening + 5);
}

TEST_CASE("Of several commands all are entered or none, and the one refused is named") {
  TestShop shop;
  const auto entries = shop.store().entries();
  const auto last = shop.store().last_commit();
  std::vector<Command> commands = {shop.command("dee", own(Presence{"kim"})),
                                   shop.command("dee", fact(Document{"kim", "induction", {}})),
                                   shop.command("dee", fact(Document{"nobody", "induction", {}}))};
  const auto refused = shop.store().commit_all(commands);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().where == "command 3");
  CHECK(shop.store().entries() == entries);
  CHECK(shop.store().last_commit() == last);
  commands.pop_back();
  const auto done = shop.store().commit_all(commands);
  REQUIRE(done);
  CHECK(done->entries.size() == 2);
  CHECK(shop.store().last_commit() == last + 2);
  const auto now = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().entries() == now);
}

TEST_CASE("A program killed in the middle of a transaction leaves nothing of it") {
  TestShop shop;
  const auto entries = shop.store().entries();
  std::vector<Command> commands;
  for (int i = 0; i < 20; ++i) commands.push_back(shop.command("dee", own(Presence{"kim", i % 2 == 0})));
  shop.close();
  for (const int fatal : {2, 10, 20}) {
    const pid_t child = fork();
    if (child == 0) {
      int asked = 0;
      auto store = Store::open(
          shop.path(),
          [&] {
            if (++asked == fatal) raise(SIGKILL);
            return evening;
          },
          cheap_pins());
      if (store) (void)store->commit_all(commands);
      _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
    shop.reopen();
    CHECK(shop.store().entries() == entries);
    shop.close();
  }
}

TEST_CASE("A long past is entered in order of its own times") {
  TestShop shop = TestShop::empty();
  std::vector<Command> commands = small_history();
  for (int i = 0; i < 20000; ++i) {
    Command command;
    command.id = "use-" + std::to_string(i);
    command.at = evening - 6 * day + (i * 7919) % 400000;
    command.action = fact(Use{"kim", "bandsaw"});
    commands.push_back(command);
  }
  REQUIRE(shop.store().found(commands));
  const auto& entries = shop.store().entries();
  CHECK(std::is_sorted(entries.begin(), entries.end(),
                       [](const Entry& a, const Entry& b) { return a.recorded < b.recorded; }));
  CHECK(std::all_of(entries.begin(), entries.end(), [](const Entry& e) { return e.at == e.recorded; }));
  CHECK_FALSE(shop.store().found({}));
}

TEST_CASE("What is struck out is known until then, and no longer") {
  TestShop shop;
  const RecordId lesson = shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(100);
  shop.enter("dee", StrikeOutRecord{lesson, "it was lou"});
  const auto knows = [&](std::optional<Instant> known) {
    const auto records = shop.store().shop(known).records;
    return std::any_of(records.begin(), records.end(), [&](const Record& r) { return r.id == lesson; });
  };
  CHECK_FALSE(knows(evening - 1));
  CHECK(knows(evening));
  CHECK(knows(evening + 99));
  CHECK_FALSE(knows(evening + 100));
  CHECK_FALSE(knows(std::nullopt));
}

TEST_CASE("Two entries of one person count as one while they are joined") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  shop.wait(10);
  const RecordId join = shop.enter("mia", own(Join{"kim", "lou"}));
  CHECK(shop.store().joined("lou") == "kim");
  CHECK(shop.store().joined("lou", evening) == "lou");
  CHECK(std::get<Lesson>(shop.store().shop().records.back().fact).person == "kim");
  CHECK(std::get<Lesson>(shop.store().shop(evening).records.back().fact).person == "lou");
  shop.wait(10);
  shop.enter("mia", StrikeOutRecord{join, "two people after all"});
  CHECK(shop.store().joined("lou") == "lou");
  CHECK(shop.store().joined("lou", evening + 15) == "kim");
}

TEST_CASE("Wrong PINs make the station wait longer and longer, and a right one ends it") {
  TestShop shop;
  for (int i = 0; i < 3; ++i) CHECK_FALSE(shop.store().sit_down("mia", "9999"));
  const auto waiting = shop.store().sit_down("mia", "1111");
  REQUIRE_FALSE(waiting);
  CHECK_THAT(waiting.error().remedy, Catch::Contains("5 seconds"));
  shop.wait(5);
  CHECK_FALSE(shop.store().sit_down("ivo", "9999"));
  CHECK_THAT(shop.store().sit_down("ivo", "2222").error().remedy, Catch::Contains("10 seconds"));
  shop.wait(10);
  CHECK(shop.store().sit_down("ivo", "2222") == Role::instructor);
  CHECK_FALSE(shop.store().sit_down("ivo", "9999"));
  CHECK(shop.store().sit_down("ivo", "2222") == Role::instructor);
  CHECK_FALSE(shop.store().sit_down("kim", ""));
  for (const char* pin : {"123", "1234567890123", "12a4", "", "１２３４"})
    CHECK_FALSE(shop.commit("mia", ChoosePin{"kim", pin}));
}

TEST_CASE("A number and a card are one person's at a time, and free again once corrected or blanked") {
  TestShop shop;
  const auto person = [](const PersonId& id, const std::string& number, const std::string& card) {
    Person made;
    made.id = id;
    made.given = "Somebody";
    made.number = number;
    made.card = card;
    return made;
  };
  const auto where = [&](Action action) {
    const auto done = shop.commit("mia", std::move(action));
    return done ? std::string() : done.error().where;
  };
  CHECK(where(EnterPerson{person("one", "M 1", "C 1"), std::nullopt}).empty());
  CHECK(where(EnterPerson{person("two", "M 1", "C 2"), std::nullopt}) == "number");
  CHECK(where(EnterPerson{person("two", "M 2", "C 1"), std::nullopt}) == "card");
  CHECK(where(EnterPerson{person("two", "", ""), std::nullopt}).empty());
  CHECK(where(EnterPerson{person("three", "", ""), std::nullopt}).empty());  // nothing is nobody's
  CHECK(where(CorrectPerson{person("one", "M 1", "C 9")}).empty());          // one's own number
  CHECK(where(CorrectPerson{person("two", "M 2", "C 1")}).empty());          // the card is free again
  CHECK(where(CorrectPerson{person("one", "M 1", "C 1")}) == "card");
  CHECK(where(BlankPerson{"two"}).empty());
  CHECK(where(CorrectPerson{person("one", "M 2", "C 1")}).empty());
  shop.reopen();
  CHECK(where(EnterPerson{person("four", "M 2", ""), std::nullopt}) == "number");
  CHECK(where(EnterPerson{person("four", "M 1", "C 9"), std::nullopt}).empty());
}
