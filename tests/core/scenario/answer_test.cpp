#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <set>
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
  const std::string name = GENERATE("calendar", "chain", "road");
  const auto scenario = read_scenario(file(here / "examples" / (name + ".json")));
  REQUIRE(scenario);
  const auto expected = lines(here / "examples" / (name + ".answers.jsonl"));
  CHECK(expected.size() == scenario->asks.size());
  CHECK(answer(*scenario) == expected);
}

TEST_CASE("Every kind of ask is answered, each with its own fields") {
  const auto scenario = read_scenario(file(here / "good.json"));
  REQUIRE(scenario);
  const auto answers = answer(*scenario);
  REQUIRE(answers.size() == scenario->asks.size());
  std::set<std::size_t> kinds;
  for (std::size_t i = 0; i < answers.size(); ++i) {
    static const std::string begins[] = {R"({"standing": )", R"({"steps": [)",   R"({"may": )",
                                         R"({"people": [)",  R"({"people": [)",  R"({"drops": [)",
                                         R"({"changes": [)", R"({"changes": [)", R"({"reaches": )"};
    const std::size_t kind = scenario->asks[i].what.index();
    CHECK_THAT(answers[i], Catch::StartsWith(begins[kind]));
    kinds.insert(kind);
  }
  CHECK(kinds.size() == std::variant_size_v<decltype(Ask::what)>);
}

TEST_CASE("Without a mode the whole machine is asked about, each of its modes") {
  auto scenario = read_scenario(file(here / "examples/road.json"));
  REQUIRE(scenario);
  // Independent on one mode and only supervised on the other: the lower counts, and nobody is there to
  // supervise.
  scenario->asks = {{{}, AskMayStart{"cleo", "unit-1", "", {1740916800}, true, {"eve"}, {}}}};
  const auto answers = answer(*scenario);
  CHECK(answers.front() == "{\"may\": false, \"because\": [\"buddy\", \"no_supervisor\"]}");
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
  CHECK(answers.front() == "{\"people\": [\"Žiga \\\"/\\u0007鋸\"]}");
}
