// The demo shop's attempts: they come to what its history says, and the two questions that have something
// wrong with them on purpose are the first to look at.
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/teach/bank_figures.h"
#include "core/teach/bank_text.h"

namespace {

using namespace wm;
using namespace wm::teach;

const std::string demo = std::string(WM_TESTS) + "/../resources/demo/";

std::string all_of(const std::string& file) {
  std::ostringstream text;
  text << std::ifstream(demo + file).rdbuf();
  return text.str();
}

std::vector<std::string> demo_banks() {
  std::vector<std::string> texts;
  for (const char* file : {"../quizzes/tier-1.txt", "tier-2-1.txt", "../quizzes/tier-2.txt",
                           "../quizzes/tier-3.txt", "../quizzes/tier-4.txt"})
    texts.push_back(all_of(file));
  return texts;
}

struct Line {
  std::string date, number, attempt;
};

std::vector<Line> demo_attempts() {
  std::vector<Line> all;
  std::istringstream lines(all_of("attempts.jsonl"));
  for (std::string line; std::getline(lines, line);) {
    const auto json = nlohmann::json::parse(line);
    all.push_back({json.at("date"), json.at("number"), json.at("attempt").dump()});
  }
  return all;
}

/// The first cells of a history's quizzes: date, kind, number, what, revision, result, critical.
std::vector<std::vector<std::string>> demo_quizzes() {
  std::vector<std::vector<std::string>> rows;
  std::istringstream lines(all_of("history.csv"));
  for (std::string line; std::getline(lines, line);) {
    std::vector<std::string> cells(7);
    std::istringstream of(line);
    for (std::string& cell : cells) std::getline(of, cell, ',');
    if (cells[1] == "quiz") rows.push_back(cells);
  }
  return rows;
}

}  // namespace

TEST_CASE("Every quiz of the demo's history has its attempt, which comes to what the history says",
          "[teach]") {
  std::map<std::pair<std::string, int>, Bank> banks;
  for (const std::string& text : demo_banks()) {
    auto bank = read_bank(text);
    REQUIRE(bank);
    banks[{bank->name, bank->revision}] = *bank;
  }
  const auto quizzes = demo_quizzes();
  const auto attempts = demo_attempts();
  REQUIRE(quizzes.size() > 400);
  REQUIRE(attempts.size() == quizzes.size());
  for (std::size_t i = 0; i < quizzes.size(); ++i) {
    const auto& quiz = quizzes[i];
    INFO(quiz[0] << ", " << quiz[2] << ", " << quiz[3]);
    REQUIRE(attempts[i].date == quiz[0]);
    REQUIRE(attempts[i].number == quiz[2]);
    const auto attempt = read_attempt(attempts[i].attempt);
    REQUIRE(attempt);
    REQUIRE(attempt->bank == quiz[3]);
    REQUIRE(std::to_string(attempt->revision) == quiz[4]);
    const auto marking = mark_attempt(banks.at({attempt->bank, attempt->revision}), *attempt);
    REQUIRE(marking);
    CHECK(std::to_string(marking->correct) + " of " + std::to_string(marking->total) == quiz[5]);
    CHECK(std::to_string(marking->critical_missed) == (quiz[6].empty() ? "0" : quiz[6]));
  }
}

TEST_CASE("The demo's two questions that have something wrong with them head the list", "[teach]") {
  std::vector<std::string> attempts;
  for (const Line& line : demo_attempts()) attempts.push_back(line.attempt);
  const auto banks = bank_figures(demo_banks(), attempts);
  const auto first = look_first(banks);
  for (const LookIn& each : first)
    UNSCOPED_INFO(each.bank->bank << " " << each.look->figures.question << " "
                                  << static_cast<int>(each.look->reasons.front().doubt) << " "
                                  << each.look->reasons.front().figure);
  REQUIRE(first.size() > 2);
  CHECK(first[0].look->figures.question == "fine-dust");
  CHECK(first[0].look->reasons.front().doubt == Doubt::strong_miss_it);
  CHECK(first[1].look->figures.question == "blade-height");
  CHECK(first[1].look->reasons.front().doubt == Doubt::below_guessing);
  // No other is as bad.
  for (std::size_t i = 2; i < first.size(); ++i)
    CHECK(first[i].look->reasons.front().doubt > Doubt::below_guessing);
}
