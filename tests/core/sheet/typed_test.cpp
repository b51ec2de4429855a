// Measures as they were typed and are kept.
#include "core/sheet/typed.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

const Measure board_thick{MeasureKind::thickness, SizeToMeasure{{fraction(1), LengthUnit::inch},
                                                                {fraction(1, 100), LengthUnit::inch},
                                                                {fraction(1, 100), LengthUnit::inch},
                                                                {fraction(1, 1000), LengthUnit::inch}}};
const Measure fence_angle{
    MeasureKind::angle,
    AngleToMeasure{{fraction(90)}, {fraction(1, 4)}, {fraction(1, 4)}, {fraction(1, 10)}}};

Sheet sheet_that_measures() {
  Sheet out;
  out.sections = {{"before", {{"Eyes and ears", "", true}}},
                  {"plane", {{"Thickness", "", true, board_thick}, {"Fence", "", false, fence_angle}}}};
  return out;
}

}  // namespace

TEST_CASE("What was typed is kept word for word, beside what it was understood as", "[sheet]") {
  CHECK(understood(board_thick, 2, "0.992").value() == LineMeasured{2, "0.992", "0.992 in", "0.001 in"});
  CHECK(understood(board_thick, 2, "25,2 mm", "0,1mm", DecimalMark::comma).value() ==
        LineMeasured{2, "25,2 mm", "25.2 mm", "0.1 mm"});
  CHECK(understood(board_thick, 2, "1 3/8\"", "1/16").value() ==
        LineMeasured{2, "1 3/8\"", "1 3/8 in", "1/16 in"});
  CHECK(understood(fence_angle, 3, "89 1/2°").value() == LineMeasured{3, "89 1/2°", "89.5 deg", "0.1 deg"});
}

TEST_CASE("A measure that cannot be read says which of the two texts, and where in it", "[sheet]") {
  const auto where = [](auto typed, auto marks) {
    const auto none = understood(board_thick, 2, typed, marks);
    REQUIRE_FALSE(none);
    return none.error().where;
  };
  CHECK_THAT(where("a bit", ""), Catch::StartsWith("measure, character"));
  CHECK_THAT(where("", ""), Catch::StartsWith("measure"));
  CHECK_THAT(where("0.992", "fine"), Catch::StartsWith("instrument, character"));
  CHECK(where("0.992", "0") == "instrument");
}

TEST_CASE("What is kept is read again as it was, and as nothing else", "[sheet]") {
  const LineMeasured thick{2, "25,2", "25.2 mm", "0.1 mm"}, square{3, "90", "90 deg", "0.1 deg"};
  CHECK(measured_of(board_thick, thick).value() == Measured{fraction(252, 254), fraction(1, 254)});
  CHECK(measured_of(fence_angle, square).value() == Measured{fraction(90), fraction(1, 10)});
  CHECK_FALSE(measured_of(board_thick, square));
  CHECK_FALSE(measured_of(fence_angle, thick));
  CHECK_FALSE(measured_of(fence_angle, {3, "90", "90", "0.1 deg"}));
}

TEST_CASE("Without the sheet it can be told whether a text is a measure at all", "[sheet]") {
  CHECK(is_measured({1, "25.2", "25.2 mm", "0.1 mm"}));
  CHECK(is_measured({1, "0", "0 in", "0.001 in"}));
  CHECK(is_measured({1, "90", "90 deg", "0.1 deg"}));
  CHECK_FALSE(is_measured({1, "25.2", "25.2", "0.1 mm"}));
  CHECK_FALSE(is_measured({1, "25.2", "25.2 mm", "0.1 deg"}));
  CHECK_FALSE(is_measured({1, "25.2", "25.2 mm", "0 mm"}));
  CHECK_FALSE(is_measured({1, "25.2", "25.2 mm", ""}));
  CHECK(is_measured({1, "3/8", "3/8 in", "1/64 in"}));
  CHECK(is_measured({1, "90,5", "90.5 deg", "0.1 deg"}));
  // What was typed says something else, or nothing that is a measure.
  CHECK_FALSE(is_measured({1, "25.3", "25.2 mm", "0.1 mm"}));
  CHECK_FALSE(is_measured({1, "asked for more light", "25.2 mm", "0.1 mm"}));
  CHECK_FALSE(is_measured({1, "91", "90 deg", "0.1 deg"}));
}

TEST_CASE("Measures go to their lines, and those of no line that measures go nowhere", "[sheet]") {
  const std::vector<LineMeasured> kept{{0, "1", "1 in", "0.001 in"},
                                       {1, "1", "1 in", "0.001 in"},
                                       {2, "0.992", "0.992 in", "0.001 in"},
                                       {3, "1", "1 in", "0.001 in"},
                                       {4, "1", "1 in", "0.001 in"}};
  const auto lines = by_line(sheet_that_measures(), kept);
  REQUIRE(lines.size() == 3);
  CHECK_FALSE(lines[0]);
  CHECK(lines[1] == Measured{fraction(992, 1000), fraction(1, 1000)});
  CHECK_FALSE(lines[2]);
  // Within, it says by itself that the line was shown.
  const std::vector<Mark> marks{Mark::shown, Mark::none, Mark::shown};
  CHECK(result_of(sheet_that_measures(), marks, {}, lines).to_measure == std::vector<std::size_t>{2});
}
