// Run sheets are read strictly: each mistake with its place.
#include "core/sheet/json.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

std::vector<std::string> places(std::string_view json) {
  std::vector<std::string> out;
  const auto sheet = read_sheet(json);
  if (sheet) return out;
  for (const Problem& problem : sheet.error()) {
    CHECK_FALSE(problem.what.empty());
    CHECK_FALSE(problem.remedy.empty());
    out.push_back(problem.where);
  }
  return out;
}

using Places = std::vector<std::string>;

}  // namespace

TEST_CASE("A run sheet is read with its sections and lines in order") {
  const auto sheet =
      read_sheet(R"({"sheet": "saw", "revision": 2, "class": "table-saw", "checkout": "rip", "title": "T",
    "sections": [{"section": "before", "lines": [{"text": "Stance", "says": "why", "critical": true}, {"text": "Eyes"}]},
                 {"section": "cut", "lines": [{"text": "Stick", "critical": false}]}]})");
  REQUIRE(sheet);
  const Sheet expected{
      "saw",
      2,
      "table-saw",
      "rip",
      "T",
      {{"before", {{"Stance", "why", true}, {"Eyes", "", false}}}, {"cut", {{"Stick", "", false}}}}};
  CHECK(*sheet == expected);
  CHECK(line_count(*sheet) == 3);
  CHECK(lines_of(*sheet)[2]->text == "Stick");
}

TEST_CASE("A mistake in a run sheet is named by its JSON pointer") {
  const std::string head = R"({"sheet": "saw", "revision": 2, "class": "c", "checkout": "rip", "sections": )";
  CHECK(places(head + "[]}") == Places{"/sections"});
  CHECK(places(head + R"([{"section": "a", "lines": []}]})") == Places{"/sections/0/lines"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": ""}]}]})") ==
        Places{"/sections/0/lines/0/text"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": 7}]}]})") ==
        Places{"/sections/0/lines/0/text"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": "x\ny"}]}]})") ==
        Places{"/sections/0/lines/0/text"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"says": "x"}]}]})") == Places{"/sections/0/lines/0"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": "x", "critical": 1}]}]})") ==
        Places{"/sections/0/lines/0/critical"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": "x", "crit/cal": true}]}]})") ==
        Places{"/sections/0/lines/0/crit~1cal"});
  CHECK(places(
            head +
            R"([{"section": "a", "lines": [{"text": "x"}]}, {"section": "a", "lines": [{"text": "y"}]}]})") ==
        Places{"/sections/1/section"});
  CHECK(places(head + R"([{"section": "a", "lines": [{"text": "x"}, {"text": "y", "text": "z"}]}]})") ==
        Places{"/sections/0/lines/1/text"});
  CHECK(places(R"([])") == Places{""});
}

TEST_CASE(
    "A run sheet without its fields has each of them named, and a revision is a whole number from 1 on") {
  CHECK(places("{}").size() == 5);
  for (const char* revision : {"0", "-1", "1.5", "\"2\"", "99999999999"})
    CHECK(places(std::string(
                     R"({"sheet": "s", "class": "c", "checkout": "k", "sections": [{"section": "a", "lines":
      [{"text": "x"}]}], "revision": )") +
                 revision + "}") == Places{"/revision"});
}

TEST_CASE("What is no JSON is named by line and column") {
  CHECK(places("{\"sheet\": \"s\",\n  \"revision\": }") == Places{"line 2, column 15"});
  CHECK(places("").size() == 1);
}

TEST_CASE("A number too big for any type and a zero byte are mistakes of a run sheet like any other") {
  const std::string head = R"({"sheet": "s", "class": "c", "checkout": "k", "revision": )";
  const std::string rest = R"(, "sections": [{"section": "a", "lines": [{"text": "x"}]}]})";
  REQUIRE(places(head + "1" + rest).empty());
  CHECK(places(head + "1e999" + rest) == Places{"/revision"});
  CHECK(places(head + "1" + rest + std::string("\0, and more", 11)).size() == 1);
}

TEST_CASE("A run sheet of very many unknown fields is read once through, not once for each") {
  std::string fields = R"("a": 0)";
  for (int i = 0; i < 300'000; ++i) fields += ",\"" + std::to_string(i) + "\": 0";
  CHECK(places("{" + fields + "}").size() == 10'001);
}
