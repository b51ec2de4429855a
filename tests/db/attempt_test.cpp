// A quiz sat at the station: what is issued, begun and handed in.
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

Expected<Committed> at_station(TestShop& shop, const PersonId& by, Action action) {
  Command command = shop.command(by, std::move(action));
  command.quiz_station = true;
  return shop.store().commit(command);
}

std::string with(std::string text, const std::string& from, const std::string& to) {
  return text.replace(text.find(from), from.size(), to);
}

}  // namespace

TEST_CASE("An attempt is marked by the store itself, by the bank as it was issued") {
  TestShop shop;
  shop.enter("mia", own(small_bank()));
  const auto begun = at_station(shop, "kim", own(begun_by("kim")));
  REQUIRE(begun);
  // The next revision asks for another gap: this attempt is marked by its own.
  Issued next = small_bank(2);
  next.text = with(next.text, "answer: 1/4 in", "answer: 3 in");
  shop.enter("mia", own(next));
  const auto handed = at_station(shop, "kim", HandIn{begun->entries[0].id, small_attempt()});
  REQUIRE(handed);
  REQUIRE(handed->entries.size() == 2);
  CHECK(*db::as<Quiz>(handed->entries[0].fact) == Quiz{"kim", "guards", 1, 2, 2, 0});
  CHECK(*db::as<AttemptSat>(handed->entries[1].fact) ==
        AttemptSat{"kim", begun->entries[0].id, handed->entries[0].id, small_attempt()});
  shop.reopen();
  CHECK(*db::as<AttemptSat>(shop.store().entries().back().fact) ==
        *db::as<AttemptSat>(handed->entries[1].fact));
}

TEST_CASE("A wrong critical answer and an open one are counted") {
  TestShop shop;
  shop.enter("mia", own(small_bank()));
  const RecordId begun = at_station(shop, "kim", own(begun_by("kim")))->entries[0].id;
  const std::string answers =
      R"({"bank": "guards", "revision": 1, "seed": "0000000000000007", "language": "en",
    "answers": [{"question": "before-cutting", "chosen": 1, "seconds": 4}]})";
  const auto handed = at_station(shop, "kim", HandIn{begun, answers});
  REQUIRE(handed);
  CHECK(*db::as<Quiz>(handed->entries[0].fact) == Quiz{"kim", "guards", 1, 0, 2, 1});
}

TEST_CASE("Answers to another paper, by somebody else or for the second time are refused") {
  TestShop shop;
  shop.enter("mia", own(small_bank()));
  const RecordId begun = at_station(shop, "kim", own(begun_by("kim")))->entries[0].id;
  const std::int64_t before = shop.store().last_commit();
  for (const auto& [from, to] :
       {std::pair("0000000000000007", "0000000000000008"), std::pair("\"en\"", "\"es\""),
        std::pair("\"revision\": 1", "\"revision\": 2"), std::pair("before-cutting", "never-asked"),
        std::pair("{\"bank\"", "\"bank\"")}) {
    INFO(to);
    CHECK_FALSE(at_station(shop, "kim", HandIn{begun, with(small_attempt(), from, to)}));
  }
  CHECK_FALSE(at_station(shop, "lou", HandIn{begun, small_attempt()}));
  CHECK_FALSE(shop.commit("kim", HandIn{begun, small_attempt()}));
  CHECK_FALSE(at_station(shop, "kim", HandIn{"nothing", small_attempt()}));
  CHECK(shop.store().last_commit() == before);
  REQUIRE(at_station(shop, "kim", HandIn{begun, small_attempt()}));
  const auto twice = at_station(shop, "kim", HandIn{begun, small_attempt()});
  REQUIRE_FALSE(twice);
  CHECK(twice.error().what == "This attempt has been handed in already.");
}

TEST_CASE("The answers go with the person, and the quiz stays") {
  TestShop shop;
  shop.enter("mia", own(small_bank()));
  const RecordId begun = at_station(shop, "lou", own(begun_by("lou")))->entries[0].id;
  const RecordId quiz = at_station(shop, "lou", HandIn{begun, small_attempt()})->entries[0].id;
  shop.enter("mia", BlankPerson{"lou"});
  shop.reopen();
  for (const Entry& entry : shop.store().entries()) {
    if (const auto* sat = db::as<AttemptSat>(entry.fact)) CHECK(*sat == AttemptSat{"lou", begun, quiz, ""});
    if (entry.id == quiz) CHECK(db::as<Quiz>(entry.fact)->correct == 2);
  }
}

TEST_CASE("A quiz is begun on a bank that was issued, in a language of it") {
  TestShop shop;
  CHECK_FALSE(at_station(shop, "kim", own(begun_by("kim"))));
  shop.enter("mia", own(small_bank()));
  AttemptBegun begun = begun_by("kim");
  begun.language = "es";
  CHECK_FALSE(at_station(shop, "kim", own(begun)));
  begun = begun_by("kim");
  begun.revision = 2;
  CHECK_FALSE(at_station(shop, "kim", own(begun)));
  begun = begun_by("kim");
  begun.seed = 0xffff'0000'ffff'0001;
  begun.helps = {Help::interpreter, Help::large_type};
  const auto done = at_station(shop, "kim", own(begun));
  REQUIRE(done);
  shop.reopen();
  CHECK(*db::as<AttemptBegun>(shop.store().entries().back().fact) == begun);
}

TEST_CASE("What is issued is read first, and has the next number") {
  TestShop shop;
  shop.enter("mia", own(small_bank(2)));
  const auto refused = [&](const Issued& issued, const std::string& where) {
    INFO(issued.name << " " << issued.revision);
    const auto done = shop.commit("mia", own(issued));
    REQUIRE_FALSE(done);
    CHECK(done.error().where.find(where) != std::string::npos);
  };
  refused(small_bank(2), "revision");
  refused(small_bank(1), "revision");
  Issued wrong = small_bank(3);
  wrong.revision = 4;
  refused(wrong, "text");
  wrong = small_bank(3);
  wrong.name = "saws";
  refused(wrong, "text");
  wrong = small_bank(3);
  wrong.text = with(wrong.text, "kind: one", "kind: any");
  refused(wrong, "line");
  refused({Work::lesson, "guards", 1, "", "  ", {}}, "text");
  refused({Work::lesson, "", 1, "", "# Guards", {}}, "name");
  refused({Work::lesson, "guards", 0, "", "# Guards", {}}, "revision");
  refused({Work::card, "lathe", 1, "", "{}", {}}, "name");
  refused({Work::card, "combi/plane", 1, "", "{}", {}}, "");
  refused({Work::sheet, "bandsaw", 1, "", "{}", {}}, "line 1");
  wrong = small_sheet();
  wrong.revision = 2;
  refused(wrong, "text");
  wrong = small_sheet();
  wrong.text = with(wrong.text, "opens: power\n", "");
  refused(wrong, "line 6");  // it does not open as every sheet does
  wrong.text = with(small_sheet().text, "* Stance", "- Stance");
  refused(wrong, "line 11");
  shop.enter("mia", own(small_sheet(3)));
  refused(small_sheet(3), "revision");
  refused(small_sheet(2), "revision");
  shop.enter("mia", own(Issued{Work::lesson, "guards", 1, "", "# Guards", {{"guard.png", "aGVsbG8="}}}));
  shop.reopen();
  const auto* kept = wm::db::as<Issued>(shop.store().entries().back().fact);
  REQUIRE(kept != nullptr);
  CHECK(kept->enclosures == std::vector<Enclosure>{{"guard.png", "aGVsbG8="}});
}

TEST_CASE("A picture that a question shows comes with the bank") {
  TestShop shop;
  Issued bank = small_bank();
  bank.text = with(bank.text, "topic: guards\ncritical", "topic: guards\npicture: saw.png\ncritical");
  const auto without = shop.commit("mia", own(bank));
  REQUIRE_FALSE(without);
  CHECK(without.error().what == "The picture 'saw.png' of question 'before-cutting' is missing.");
  bank.enclosures = {{"saw.png", "aGVsbG8="}};
  CHECK(shop.commit("mia", own(bank)));
}
