// What an edit of a bank comes to.
#include "core/teach/bank_changes.h"

#include <catch2/catch.hpp>

#include "banks.h"

using namespace wm::teach;

TEST_CASE("Every kind of change to a question is found, and whether it was counted", "[teach]") {
  made::Dice dice(3);
  for (int round = 0; round < 50; ++round) {
    const Bank before = made::bank(dice);
    CHECK(changes(before, before) == BankChanges{});
    for (std::size_t i = 0; i < before.questions.size(); ++i) {
      Bank after = before;
      Question& question = after.questions[i];
      switch (made::whole(dice, 0, 5)) {
        case 0:
          question.wordings.back().text += " Really?";
          break;
        case 1:
          question.wordings.front().reason += " So.";
          break;
        case 2:
          question.topic += "s";
          break;
        case 3:
          question.critical = !question.critical;
          break;
        case 4:
          question.picture += ".png";
          break;
        default:
          question.partial = !question.partial;
      }
      BankChanges expected;
      expected.uncounted = {question.id};
      CHECK(changes(before, after) == expected);
      ++question.revision;
      expected.uncounted.swap(expected.changed);
      CHECK(changes(before, after) == expected);
      // Back again: what was sat meanwhile had the higher one.
      expected.uncounted.swap(expected.changed);
      CHECK(changes(after, before) == expected);
    }
  }
}

TEST_CASE("Questions that are new, gone or only moved are told apart", "[teach]") {
  made::Dice dice(8);
  Bank before = made::bank(dice);
  REQUIRE(before.questions.size() >= 3);
  Bank after = before;
  std::swap(after.questions.front(), after.questions.back());
  CHECK(changes(before, after) == BankChanges{});
  after.questions[1].id = "another";
  after.minutes = 1 + before.minutes.value_or(0);
  after.pass_percent = before.pass_percent == 80 ? 90 : 80;
  after.languages.push_back("xx");
  after.draws.pop_back();
  const BankChanges found = changes(before, after);
  CHECK(found.added == std::vector<std::string>{"another"});
  CHECK(found.removed == std::vector<std::string>{before.questions[1].id});
  CHECK(found.changed.empty());
  CHECK(found.uncounted.empty());
  CHECK((found.languages && found.pass_percent && found.minutes && found.draws));
}
