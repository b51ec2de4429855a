// What the judges once found stays found: found/NAME.json is a scenario with asks, NAME.answers.jsonl beside
// it what the judge holds right, a line an ask.
#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/scenario/scenario.h"

using namespace wm;

namespace {

/// The parts of an answer that the judge speaks of. As values: the judges write their JSON with other spaces.
nlohmann::json spoken_of(const nlohmann::json& answer, const nlohmann::json& right) {
  nlohmann::json found;
  for (const auto& [key, value] : right.items())
    found[key] = key == "fewest" ? nlohmann::json(answer.at("steps").size()) : answer.at(key);
  return found;
}

}  // namespace

TEST_CASE("every scenario in found/ is answered as its judge has it", "[found]") {
  int asks = 0;
  for (const auto& entry : std::filesystem::directory_iterator(WM_ORACLES "/found")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().filename().string());
    std::stringstream text;
    text << std::ifstream(entry.path()).rdbuf();
    const auto scenario = read_scenario(text.str());
    REQUIRE(scenario);
    const auto answers = answer(*scenario);
    std::ifstream right(std::filesystem::path(entry.path()).replace_extension(".answers.jsonl"));
    std::size_t i = 0;
    for (std::string line; std::getline(right, line); ++i, ++asks) {
      REQUIRE(i < answers.size());
      const auto expected = nlohmann::json::parse(line);
      CHECK(spoken_of(nlohmann::json::parse(answers.at(i)), expected) == expected);
    }
    CHECK(i == answers.size());
  }
  WARN(asks << " answers of found/ held");
  CHECK(asks > 0);
}
