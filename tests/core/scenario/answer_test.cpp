#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/scenario/scenario.h"

using namespace wm;

namespace {

std::string file(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<std::string> lines(const std::filesystem::path& path) {
  std::vector<std::string> all;
  std::istringstream in(file(path));
  for (std::string line; std::getline(in, line);) all.push_back(line);
  return all;
}

const std::filesystem::path here = WM_TESTS "/core/scenario";

}  // namespace

TEST_CASE("The worked examples are answered word for word") {
  int answered = 0;
  for (const char* name : {"calendar", "chain", "road"}) {
    const auto scenario = read_scenario(file(here / "examples" / (name + std::string(".json"))));
    REQUIRE(scenario);
    const auto expected = lines(here / "examples" / (name + std::string(".answers.jsonl")));
    REQUIRE(expected.size() == scenario->asks.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
      // One ask at a time: some kinds are not answered yet.
      const auto answers = answer({scenario->shop, {scenario->asks[i]}});
      if (!answers) continue;
      INFO(name << ", ask " << i);
      CHECK(answers->size() == 1);
      CHECK(answers->front() == expected[i]);
      ++answered;
    }
  }
  CHECK(answered >= 21);
}

TEST_CASE("Several asks are answered in order, each by what was known when it says") {
  const auto scenario = read_scenario(file(here / "examples/calendar.json"));
  REQUIRE(scenario);
  const auto answers = answer(*scenario);
  REQUIRE(answers);
  CHECK(*answers == lines(here / "examples/calendar.answers.jsonl"));
}

TEST_CASE("An ask that is not answered yet is refused by name before anything is answered") {
  const auto scenario = read_scenario(file(here / "good.json"));
  REQUIRE(scenario);
  const auto answers = answer(*scenario);
  REQUIRE_FALSE(answers);
  CHECK(answers.error().where == "/asks/9/ask");
  CHECK_THAT(answers.error().what, Catch::Contains("\"route\""));
}

TEST_CASE("Without a mode the whole machine is asked about, each of its modes") {
  auto scenario = read_scenario(file(here / "examples/road.json"));
  REQUIRE(scenario);
  // Independent on one mode and only supervised on the other: the lower counts, and nobody is there to
  // supervise.
  scenario->asks = {{{}, AskMayStart{"cleo", "unit-1", "", {1740916800}, true, {"eve"}, {}}}};
  const auto answers = answer(*scenario);
  REQUIRE(answers);
  CHECK(answers->front() == "{\"may\": false, \"because\": [\"buddy\", \"no_supervisor\"]}");
}

TEST_CASE("Names in answers are written as they are, and only what must be escaped is") {
  std::string text = file(here / "good.json");
  const auto replace = [&](const std::string& find, const std::string& by) {
    for (std::size_t at; (at = text.find(find)) != std::string::npos;) text.replace(at, find.size(), by);
  };
  replace("\"ana\"", R"("\u017diga \"/\u0007鋸")");
  auto scenario = read_scenario(text);
  REQUIRE(scenario);
  scenario->asks = {{{}, AskWho{"saw", {1769904000}, Rung::supervised}}};
  const auto answers = answer(*scenario);
  REQUIRE(answers);
  CHECK(answers->front() == "{\"people\": [\"Žiga \\\"/\\u0007鋸\"]}");
}
