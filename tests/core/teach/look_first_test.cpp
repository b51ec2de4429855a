// Bad questions that were put in on purpose come first.
#include "core/teach/look_first.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "banks.h"

namespace {

using namespace wm;
using namespace wm::teach;

/// How one of four choices, the first right, is chosen by somebody of that ability, from -2 (weak) to 2
/// (strong).
using Chooses = std::size_t (*)(made::Dice&, double ability);

std::size_t sound(made::Dice& dice, double ability) {
  if (made::chance(dice, static_cast<int>(100 / (1 + std::exp(-1.2 * ability - 1))))) return 0;
  return static_cast<std::size_t>(made::whole(dice, 1, 3));
}
/// The key is wrong: the strong know that the second is right.
std::size_t wrong_key(made::Dice& dice, double ability) {
  const std::size_t choice = sound(dice, ability);
  return choice == 0 ? 1 : choice == 1 ? 0 : choice;
}
/// A choice that is as right as the right one, for who thinks further.
std::size_t two_right(made::Dice& dice, double ability) {
  if (ability > 0.3 && made::chance(dice, 45)) return 2;
  return sound(dice, ability + 1.5);
}
std::size_t guessed(made::Dice& dice, double) { return static_cast<std::size_t>(made::whole(dice, 0, 3)); }
std::size_t one_unused(made::Dice& dice, double ability) {
  const std::size_t choice = sound(dice, ability);
  return choice == 3 ? 2 : choice;
}

std::vector<QuestionFigures> figures(const std::vector<Chooses>& questions, int people, std::uint64_t seed) {
  made::Dice dice(seed);
  std::vector<SeenAttempt> all;
  for (; people > 0; --people) {
    const double ability = made::whole(dice, -200, 200) / 100.0;
    SeenAttempt attempt;
    for (std::size_t i = 0; i < questions.size(); ++i) {
      const std::size_t chosen = questions[i](dice, ability);
      attempt.answers.push_back({"q" + std::to_string(i + 10),
                                 "t",
                                 1,
                                 {chosen == 0, chosen == 0 ? 1 : 0},
                                 {true, false, false, false},
                                 {chosen}});
    }
    all.push_back(attempt);
  }
  return question_figures(all);
}

bool has(const LookAt& at, Doubt doubt) {
  for (const Reason& reason : at.reasons)
    if (reason.doubt == doubt) return true;
  return false;
}

}  // namespace

TEST_CASE("Of twenty questions the one with a wrong key and the one with two right answers head the list",
          "[teach]") {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    std::vector<Chooses> questions(20, sound);
    questions[7] = wrong_key;
    questions[13] = two_right;
    const auto first = look_first(figures(questions, 300, seed));
    INFO("seed " << seed);
    REQUIRE(first.size() >= 2);
    const LookAt& key = first[0].figures.question == "q17" ? first[0] : first[1];
    const LookAt& two = first[0].figures.question == "q17" ? first[1] : first[0];
    CHECK(key.figures.question == "q17");
    CHECK(key.reasons.front() == Reason{Doubt::strong_miss_it, {}, *key.figures.with_rest});
    CHECK(two.figures.question == "q23");
    CHECK(has(two, Doubt::strong_choose_wrong));
  }
}

TEST_CASE("A question that is guessed tells nothing, and a choice that nobody takes is named", "[teach]") {
  std::vector<Chooses> questions(12, sound);
  questions[3] = guessed;
  questions[5] = one_unused;
  const auto first = look_first(figures(questions, 2000, 5));
  const auto at = [&](const std::string& id) {
    for (const LookAt& each : first)
      if (each.figures.question == id) return each;
    return LookAt{};
  };
  CHECK(has(at("q13"), Doubt::tells_nothing));
  REQUIRE(at("q15").reasons.size() == 1);
  CHECK(at("q15").reasons.front() == Reason{Doubt::never_chosen, 3, 0});
  CHECK(first.back().figures.question == "q15");
}

TEST_CASE("Fewer right than by guessing is a doubt for one right choice of several", "[teach]") {
  std::vector<Chooses> questions(12, sound);
  questions[0] = wrong_key;
  const auto first = look_first(figures(questions, 400, 9));
  REQUIRE_FALSE(first.empty());
  CHECK(has(first[0], Doubt::below_guessing));
  for (std::size_t i = 1; i < first.size(); ++i) CHECK_FALSE(has(first[i], Doubt::below_guessing));
}

TEST_CASE("Good questions, and those with few answers, are rarely doubted", "[teach]") {
  std::vector<Chooses> bad(8, wrong_key);
  CHECK(look_first(figures(bad, 29, 1)).empty());
  CHECK(look_first(std::vector<QuestionFigures>{}).empty());
  std::size_t doubted = 0;
  for (std::uint64_t seed = 0; seed < 50; ++seed)
    doubted += look_first(figures(std::vector<Chooses>(20, sound), 300, seed)).size();
  CHECK(doubted < 20);  // of a thousand
}
