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

TEST_CASE(
    "Lines that measure are read with the units in which they are written, and written back as the same") {
  const auto sheet = read_sheet(
      R"({"sheet": "s", "revision": 1, "class": "c", "checkout": "k", "sections": [{"section": "a", "lines": [
    {"text": "x", "says": "y", "critical": true, "measure": {"kind": "thickness", "nominal": "1 3/8 in", "below": "0 in", "above": "0.3 mm", "instrument": "0.001 in"}},
    {"text": "x", "measure": {"kind": "angle", "nominal": "90 deg", "below": "0.2 deg", "above": "1/3 deg", "instrument": "0.1 deg"}},
    {"text": "x", "measure": {"kind": "squareness", "at_most": "0.004 in", "over": "4 in", "instrument": "0.001 in"}},
    {"text": "x", "measure": {"kind": "flatness", "at_most": "0.2 mm", "over": "60 cm", "instrument": "0.05 mm"}}]}]})");
  REQUIRE(sheet);
  const auto lines = lines_of(*sheet);
  CHECK(lines[0]->measure ==
        Measure{MeasureKind::thickness, SizeToMeasure{{fraction(11, 8), LengthUnit::inch},
                                                      {fraction(0), LengthUnit::inch},
                                                      {fraction(3, 10), LengthUnit::millimetre},
                                                      {fraction(1, 1000), LengthUnit::inch}}});
  CHECK(lines[1]->measure ==
        Measure{MeasureKind::angle,
                AngleToMeasure{{fraction(90)}, {fraction(1, 5)}, {fraction(1, 3)}, {fraction(1, 10)}}});
  CHECK(lines[2]->measure->kind == MeasureKind::squareness);
  CHECK(std::get<GapToMeasure>(lines[3]->measure->what).over == Length{fraction(60), LengthUnit::centimetre});
  CHECK(read_sheet(to_json(*sheet)) == *sheet);
}

TEST_CASE("A mistake in what a line measures is named by its JSON pointer") {
  const auto of = [](const std::string& measure) {
    Places found = places(
        R"({"sheet": "s", "revision": 1, "class": "c", "checkout": "k", "sections": [{"section": "a", "lines": [
      {"text": "x", "measure": )" +
        measure + "}]}]}");
    for (std::string& place : found) {
      REQUIRE(place.starts_with("/sections/0/lines/0/measure"));
      place.erase(0, 27);
    }
    return found;
  };
  const auto thickness = [&](const std::string& nominal, const std::string& above,
                             const std::string& instrument) {
    return of(R"({"kind": "thickness", "below": "0 in", "nominal": ")" + nominal + R"(", "above": ")" +
              above + R"(", "instrument": ")" + instrument + "\"}");
  };
  CHECK(thickness("1 in", "1/64 in", "1/64 in").empty());
  CHECK(thickness("1 in", "1/64 in", "1/63 in") == Places{"/instrument"});
  CHECK(thickness("1 in", "0 in", "0.001 in") == Places{"/instrument"});
  CHECK(thickness("1 in", "1/64 in", "0 in") == Places{"/instrument"});
  CHECK(thickness("0 in", "1/64 in", "1/64 in") == Places{"/nominal"});
  CHECK(thickness("1", "1/64 in", "1/64 in") == Places{"/nominal"});
  CHECK(thickness("1 in", "-1/64 in", "1/64 in") == Places{"/above"});
  CHECK(thickness("1 in", "a bit", "1/64 in") == Places{"/above"});
  CHECK(of("7") == Places{""});
  CHECK(of("{}") == Places{""});
  CHECK(of(R"({"kind": "colour", "nominal": 5})") == Places{"/kind"});
  CHECK(
      of(R"({"kind": "angle", "nominal": "90 in", "below": "1 deg", "above": "1 deg", "instrument": "1 deg"})") ==
      Places{"/nominal"});
  CHECK(
      of(R"({"kind": "angle", "nominal": 90, "below": "1 deg", "above": "1 deg", "instrument": "0 deg"})") ==
      Places{"/nominal", "/instrument"});
  CHECK(of(R"({"kind": "flatness", "at_most": "0.01 in", "over": "0 in", "instrument": "0.001 in"})") ==
        Places{"/over"});
  CHECK(
      of(R"({"kind": "flatness", "at_most": "0.01 in", "over": "1 ft", "instrument": "0.001 in", "nominal": "1 in"})") ==
      Places{"/nominal"});
  CHECK(of(R"({"kind": "squareness", "at_most": "0.01 in", "instrument": "0.001 in"})") == Places{""});
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
