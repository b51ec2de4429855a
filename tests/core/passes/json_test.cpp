// Limits cards are read strictly, each mistake with its place, and written back.
#include "core/passes/json.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

const char* const good =
    R"({"depths": [{"width": "6 in", "deepest": "1/8 in"}, {"width": "12 in", "deepest": "1.5 mm"}],
  "shortest": "6 in", "thinnest": "1/4 in", "light": "1/32 in", "scale_marks": "1/64 in", "scale_error": "1/16 in", "wheel": {"turn": "5/32 in", "divisions": 20}})";

/// The places of what is wrong once `from` is `to`.
std::vector<std::string> wrong(std::string_view from, std::string_view to) {
  std::string json = good;
  const std::size_t at = json.find(from);
  REQUIRE(at != std::string::npos);
  json.replace(at, from.size(), to);
  std::vector<std::string> places;
  const auto card = read_planer_card(json);
  if (!card)
    for (const Problem& problem : card.error()) places.push_back(problem.where);
  return places;
}

using Wrong = std::vector<std::string>;

}  // namespace

TEST_CASE("A planer's card is read in whatever units it is written, and written back as the same",
          "[passes]") {
  const auto card = read_planer_card(good);
  REQUIRE(card);
  const PlanerCard expected{{{{inches(6), inches(1, 8)}, {inches(12), millimetres(3, 2)}},
                             inches(6),
                             inches(1, 4),
                             inches(1, 32),
                             inches(1, 64),
                             inches(1, 16)},
                            {inches(5, 32), 20}};
  CHECK(*card == expected);
  CHECK(
      to_json(*card) ==
      R"({"depths":[{"width":"6 in","deepest":"1/8 in"},{"width":"12 in","deepest":"1.5 mm"}],"shortest":"6 in",)"
      R"("thinnest":"1/4 in","light":"1/32 in","scale_marks":"1/64 in","scale_error":"1/16 in","wheel":{"turn":"5/32 in","divisions":20}})");
  CHECK(read_planer_card(to_json(*card)) == *card);
  CHECK(mistakes_in(*card).empty());
}

TEST_CASE("A jointer's card has no wheel, and a card may lack the shortest length", "[passes]") {
  CHECK_FALSE(read_jointer_card(good));
  const auto card = read_jointer_card(
      R"({"depths": [{"width": "8 in", "deepest": "1/8 in"}], "thinnest": "1/2 in", "light": "1/32 in", "scale_marks": "1/64 in", "scale_error": "0 in"})");
  REQUIRE(card);
  CHECK_FALSE(card->limits.shortest);
  CHECK(read_jointer_card(to_json(*card)) == *card);
  REQUIRE(mistakes_in(*card).size() == 1);
  CHECK(mistakes_in(*card)[0].where == "shortest");
}

TEST_CASE(
    "A jointer's card may say how narrow an edge may leave a board; without, it is as thin as it may be",
    "[passes]") {
  const std::string before =
      R"({"depths":[{"width":"8 in","deepest":"1/8 in"}],"thinnest":"1/2 in","light":"1/32 in","scale_marks":"1/64 in","scale_error":"0 in"})";
  const auto card = read_jointer_card(before);
  REQUIRE(card);
  CHECK(narrowest_left(*card) == inches(1, 2));
  CHECK(to_json(*card) == before);
  JointerCard narrow = *card;
  narrow.narrowest = inches(3, 4);
  CHECK(narrowest_left(narrow) == inches(3, 4));
  CHECK(to_json(narrow) == before.substr(0, before.size() - 1) + R"(,"narrowest":"3/4 in"})");
  CHECK(read_jointer_card(to_json(narrow)) == narrow);
  CHECK_FALSE(read_planer_card(to_json(narrow)));
}

TEST_CASE("A mistake in a limits card is named by its JSON pointer", "[passes]") {
  CHECK(wrong("6 in", "6 in").empty());
  CHECK(wrong("\"6 in\"", "6") == Wrong{"/depths/0/width"});
  CHECK(wrong("6 in", "6") == Wrong{"/depths/0/width"});
  CHECK(wrong("6 in", "12 in") == Wrong{"/depths"});
  CHECK(wrong("1/8 in", "1 mm") == Wrong{"/depths"});
  CHECK(wrong("1/8 in", "0 in") == Wrong{"/depths/0/deepest"});
  CHECK(wrong("1/16 in", "-1/16 in") == Wrong{"/scale_error"});
  CHECK(wrong("\"light\"", "\"light pass\"") == Wrong{"", "/light pass"});
  CHECK(wrong("20", "0") == Wrong{"/wheel/divisions"});
  CHECK(wrong("20", "20.5") == Wrong{"/wheel/divisions"});
  CHECK(wrong("\"turn\"", "\"thinnest\": 1, \"turn\"") == Wrong{"/wheel/thinnest"});
  CHECK(wrong("{", "") == Wrong{"line 1, column 9"});
}
