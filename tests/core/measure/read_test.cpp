// Lengths as people type them.
#include "core/measure/read.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/measure/show.h"

namespace {

using namespace wm;

/// What was read, exactly, in its own unit; or the place of the mistake.
std::string as_read(std::string_view typed, LengthUnit plain = LengthUnit::inch,
                    DecimalMark mark = DecimalMark::point) {
  const auto length = read_length(typed, plain, mark);
  if (length) return length->amount.get_str() + " " + std::string(word(length->unit));
  CHECK_FALSE(length.error().what.empty());
  CHECK_FALSE(length.error().remedy.empty());
  return length.error().where;
}

}  // namespace

TEST_CASE("A length is read as it is typed at a machine", "[measure]") {
  for (const char* typed :
       {"1 3/8", "1-3/8", "1-3/8\"", "1 3/8 in", "1 3/8\"", "  1  3/8 in. ", "1⅜", "1 ⅜″", "1‑3/8",
        "1–3/8 inches", "1 3⁄8”", "11/8", "1.375", "1,375 in", "1.375 IN", "22/16''"}) {
    INFO(typed);
    // With the comma for thousands, "1,375" could be more than a thousand inches.
    CHECK(as_read(typed, LengthUnit::inch,
                  std::string_view(typed) == "1,375 in" ? DecimalMark::comma : DecimalMark::point) ==
          "11/8 in");
  }
  CHECK(as_read("0.992") == "124/125 in");
  CHECK(as_read(".992") == "124/125 in");
  CHECK(as_read("½") == "1/2 in");
  CHECK(as_read("⅛ in") == "1/8 in");
  CHECK(as_read("3") == "3 in");
  CHECK(as_read("010") == "10 in");
  CHECK(as_read("010/016") == "5/8 in");
  CHECK(as_read("08.08") == "202/25 in");
  CHECK(as_read("0") == "0 in");
  CHECK(as_read("25.2 mm") == "126/5 mm");
  CHECK(as_read("25.2mm") == "126/5 mm");
  CHECK(as_read("3,2 mm") == "16/5 mm");
  CHECK(as_read("3,2\u00a0mm") == "16/5 mm");
  CHECK(as_read("2 cm") == "2 cm");
  CHECK(as_read("8 ft") == "8 ft");
  CHECK(as_read("1/2 mm") == "1/2 mm");
  CHECK(as_read("12", LengthUnit::millimetre) == "12 mm");
}

TEST_CASE("A length that is no length is refused with the character at which it goes wrong", "[measure]") {
  const std::pair<const char*, const char*> refused[] = {{"", "character 1"},
                                                         {"   ", "character 1"},
                                                         {"x", "character 1"},
                                                         {"in", "character 1"},
                                                         {"1 3", "character 3"},
                                                         {"1/0", "character 3"},
                                                         {"1 3/0 in", "character 5"},
                                                         {"1 9/8", "character 3"},
                                                         {"1 8/8", "character 3"},
                                                         {"1/", "character 3"},
                                                         {"/8", "character 1"},
                                                         {"3.", "character 3"},
                                                         {".", "character 2"},
                                                         {"1.2.3", "character 4"},
                                                         {"1,234.5", "character 2"},
                                                         {"1 250", "character 3"},
                                                         {"1.5 1/2", "character 5"},
                                                         {"-1/8", "character 1"},
                                                         {"1e3", "character 2"},
                                                         {"1 3/8 1/2", "character 7"},
                                                         {"3 m", "character 3"},
                                                         {"5'", "character 2"},
                                                         {"⅛⅛", "character 2"},
                                                         {"1½ €", "character 4"},
                                                         {"0x10", "character 2"},
                                                         {"+1", "character 1"},
                                                         {"nan", "character 1"},
                                                         {"1--3/8", "character 2"},
                                                         {"1 -3/8", "character 3"},
                                                         {"1 in 3/8", "character 3"},
                                                         {"0.1234567890", "character 3"},
                                                         {"1234567890", "character 1"},
                                                         {"25.2 mm mm", "character 6"}};
  for (const auto& [typed, place] : refused) {
    INFO(typed);
    CHECK(as_read(typed) == place);
  }
  CHECK(as_read(std::string(61, '1')) == "character 1");
  CHECK(as_read(std::string("1\0", 2)) == "character 2");
}

TEST_CASE("A mark that may part thousands as well as decimals is refused, in either locale", "[measure]") {
  using enum DecimalMark;
  CHECK(as_read("1,250", LengthUnit::inch, point) == "character 2");
  CHECK(as_read("1.250", LengthUnit::inch, point) == "5/4 in");
  CHECK(as_read("1.250", LengthUnit::inch, comma) == "character 2");
  CHECK(as_read("1,250", LengthUnit::inch, comma) == "5/4 in");
  CHECK(as_read("125,250 mm", LengthUnit::inch, point) == "character 4");
  // None of these can be thousands.
  CHECK(as_read("0,992", LengthUnit::inch, point) == "124/125 in");
  CHECK(as_read(",992", LengthUnit::inch, point) == "124/125 in");
  CHECK(as_read("1,25", LengthUnit::inch, point) == "5/4 in");
  CHECK(as_read("1,2500", LengthUnit::inch, point) == "5/4 in");
  CHECK(as_read("1250,125", LengthUnit::inch, point) == "10001/8 in");
  const auto told = read_length("1,250");
  REQUIRE_FALSE(told);
  CHECK(told.error().what == "1,250 may mean 1250 as well as 1.250.");
  CHECK(told.error().remedy == "Write 1250, or 1.250.");
}

TEST_CASE("A fraction without a unit is refused where millimetres are meant", "[measure]") {
  CHECK(as_read("3/8", LengthUnit::millimetre) == "character 1");
  CHECK(as_read("1⅜", LengthUnit::millimetre) == "character 1");
  CHECK(as_read("3/8 in", LengthUnit::millimetre) == "3/8 in");
  CHECK(as_read("1.5", LengthUnit::millimetre) == "3/2 mm");
}

TEST_CASE("A file says the unit of each length", "[measure]") {
  CHECK(read_length_with_unit("1/64 in") == Length{fraction(1, 64), LengthUnit::inch});
  const auto without = read_length_with_unit("1/64");
  REQUIRE_FALSE(without);
  CHECK(without.error().where == "character 5");
}

TEST_CASE("A number is read like a length without a unit, and may be below zero", "[measure]") {
  CHECK(*read_number("1/8") == fraction(1, 8));
  CHECK(*read_number("-1 3/8") == fraction(-11, 8));
  CHECK(*read_number("−0.125") == fraction(-1, 8));
  CHECK(*read_number("2/4") == fraction(1, 2));
  CHECK_FALSE(read_number("1/8 in"));
  CHECK_FALSE(read_number(""));
  CHECK_FALSE(read_number("- 1"));
}

TEST_CASE("An angle is read in degrees", "[measure]") {
  CHECK(read_degrees("90") == Degrees{fraction(90)});
  CHECK(read_degrees("89.9°") == Degrees{fraction(899, 10)});
  CHECK(read_degrees("45 1/2 deg") == Degrees{fraction(91, 2)});
  CHECK(to_text(Degrees{fraction(899, 10)}) == "89.9 deg");
  CHECK(to_text(Degrees{fraction(1, 3)}) == "1/3 deg");
  for (const char* wrong : {"", "90 in", "-1", "90 deg 5"}) CHECK_FALSE(read_degrees(wrong));
}

TEST_CASE("Whatever is typed is read or refused at a place inside of it", "[measure]") {
  const std::string_view pieces[] = {"1", "0",  "8",  "/",  " ", "-", ".",    ",",
                                     "½", "in", "mm", "\"", "'", "m", "\xc2", "e"};
  const bool holds = rc::check("any pieces", [&] {
    const auto picks =
        *rc::gen::container<std::vector<std::size_t>>(rc::gen::inRange<std::size_t>(0, std::size(pieces)));
    std::string typed;
    for (const std::size_t pick : picks) typed += pieces[pick];
    if (const auto length = read_length(typed)) {
      RC_ASSERT(length->amount >= 0);
      RC_ASSERT(*read_length_with_unit(to_text(*length)) == *length);
    } else {
      const std::size_t place = std::stoul(length.error().where.substr(10));
      RC_ASSERT(place >= 1 && place <= typed.size() + 1);
    }
  });
  CHECK(holds);
}
