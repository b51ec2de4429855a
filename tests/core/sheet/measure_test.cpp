// What a line of a run sheet measures, as it is read off and judged.
#include "core/sheet/measure.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

const Length thousandth{fraction(1, 1000), LengthUnit::inch};

const Measure inch_thick{
    MeasureKind::thickness,
    SizeToMeasure{
        {fraction(1), LengthUnit::inch}, {fraction(1, 100), LengthUnit::inch}, {fraction(0)}, thousandth}};
const Measure fence{MeasureKind::angle,
                    AngleToMeasure{{fraction(90)}, {fraction(1, 4)}, {fraction(1, 4)}, {fraction(1, 10)}}};
const Measure edge{
    MeasureKind::squareness,
    GapToMeasure{{fraction(4, 1000), LengthUnit::inch}, {fraction(4), LengthUnit::inch}, thousandth}};
const Measure face{MeasureKind::flatness, GapToMeasure{{fraction(2, 10), LengthUnit::millimetre},
                                                       {fraction(60), LengthUnit::centimetre},
                                                       {fraction(5, 100), LengthUnit::millimetre}}};

Judged judged(const Measure& measure, const char* typed) {
  const auto read = read_measured(measure, typed);
  REQUIRE(read);
  return judge(measure, *read);
}

}  // namespace

TEST_CASE("A thickness is judged in whatever unit it was read off", "[sheet]") {
  CHECK(judged(inch_thick, "0.992") == Judged{Verdict::within, 0, true});
  CHECK(judged(inch_thick, "0.990").verdict == Verdict::within);
  CHECK(judged(inch_thick, "25.2 mm") == Judged{Verdict::within, 0, true});
  CHECK(judged(inch_thick, "25.4 mm").verdict == Verdict::within);
  CHECK(judged(inch_thick, "25.5 mm") == Judged{Verdict::over, fraction(1, 254), true});
  CHECK(judged(inch_thick, "63/64") == Judged{Verdict::under, fraction(99, 100) - fraction(63, 64), true});
  CHECK_FALSE(read_measured(inch_thick, "a bit under"));
}

TEST_CASE("The fence is judged in degrees", "[sheet]") {
  CHECK(judged(fence, "90").sure);
  CHECK(judged(fence, "89.8 deg") == Judged{Verdict::within, 0, true});
  CHECK(judged(fence, "89.7°") == Judged{Verdict::under, fraction(1, 20), false});
  CHECK(judged(fence, "90 1/4").verdict == Verdict::within);
}

TEST_CASE("Squareness is the gap that is found over the length that it is found along", "[sheet]") {
  CHECK(judged(edge, "0").sure);
  CHECK(judged(edge, "0.003") == Judged{Verdict::within, 0, true});
  // The next feeler, which did not go in, is over.
  CHECK(judged(edge, "0.004") == Judged{Verdict::within, 0, false});
  CHECK(judged(edge, "0.005") == Judged{Verdict::over, fraction(1, 1000), true});
}

TEST_CASE("Flatness is the feeler that goes in under a straightedge", "[sheet]") {
  CHECK(judged(face, "0.15").sure);
  CHECK(judged(face, "0,2 mm") == Judged{Verdict::within, 0, false});
  CHECK(judged(face, "0.25") == Judged{Verdict::over, fraction(5, 2540), true});
}

TEST_CASE("An instrument that was taken instead of the line's may be too coarse", "[sheet]") {
  Measured read = *read_measured(inch_thick, "1");
  CHECK_FALSE(too_coarse(inch_thick, read));
  read.marks = fraction(1, 100);
  CHECK_FALSE(too_coarse(inch_thick, read));
  read.marks = fraction(1, 64);
  CHECK(too_coarse(inch_thick, read));
}
