// Lengths as text: exactly, and as an instrument shows them.
#include "core/measure/show.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/measure/read.h"

namespace {

using namespace wm;

const Length sixteenths{fraction(1, 16), LengthUnit::inch};
const Length thousandths{fraction(1, 1000), LengthUnit::inch};
const Length tenths{fraction(1, 10), LengthUnit::millimetre};

}  // namespace

TEST_CASE("An inch is 25.4 mm exactly, and 1/64 of it 0.396875 mm", "[measure]") {
  // Agreement of 1959.
  CHECK(millimetres(254, 10) == inches(1));
  CHECK(to_text(in_unit(inches(1, 64), LengthUnit::millimetre)) == "0.396875 mm");
  CHECK(to_text(in_unit(inches(1, 16), LengthUnit::millimetre)) == "1.5875 mm");
  CHECK(to_text({fraction(71875, 100000), LengthUnit::inch}) == "23/32 in");
  CHECK(in_inches({fraction(2), LengthUnit::foot}) == inches(24));
  CHECK(in_inches({fraction(2), LengthUnit::centimetre}) == millimetres(20));
}

TEST_CASE("A length is written exactly in its unit", "[measure]") {
  CHECK(to_text({fraction(11, 8), LengthUnit::inch}) == "1 3/8 in");
  CHECK(to_text({fraction(992, 1000), LengthUnit::inch}) == "0.992 in");
  CHECK(to_text({fraction(126, 5), LengthUnit::millimetre}) == "25.2 mm");
  CHECK(to_text({fraction(1, 3), LengthUnit::inch}) == "1/3 in");
  // More decimals than would be read.
  CHECK(to_text({fraction(1, 1024), LengthUnit::millimetre}) == "1/1024 mm");
  CHECK(to_text({fraction(3), LengthUnit::inch}) == "3 in");
  CHECK(to_text({fraction(-11, 8), LengthUnit::inch}) == "-1 3/8 in");
  CHECK(to_text({fraction(-1, 20), LengthUnit::millimetre}) == "-0.05 mm");
}

TEST_CASE("A length in inches is written in the unit that it was most likely written in", "[measure]") {
  CHECK(to_text(inches(5, 32)) == "5/32 in");
  CHECK(to_text(inches(992, 1000)) == "0.992 in");
  CHECK(to_text(millimetres(4)) == "4 mm");
  CHECK(to_text(millimetres(254, 10)) == "1 in");
  CHECK(to_text(inches(1, 3)) == "1/3 in");
  CHECK(to_text(inches(0)) == "0 in");
}

TEST_CASE("What an instrument shows comes with how far it is off", "[measure]") {
  CHECK(shown(inches(11, 8), sixteenths) == Shown{"1 3/8 in", inches(0)});
  CHECK(shown(inches(992, 1000), sixteenths) == Shown{"1 in", inches(-8, 1000)});
  CHECK(shown(inches(1, 32), sixteenths) == Shown{"1/16 in", inches(-1, 32)});
  CHECK(shown(inches(-1, 32), sixteenths) == Shown{"-1/16 in", inches(1, 32)});
  CHECK(shown(inches(1), thousandths) == Shown{"1.000 in", inches(0)});
  CHECK(shown(inches(3, 8), tenths) == Shown{"9.5 mm", millimetres(25, 1000)});
  CHECK(shown(millimetres(2), {fraction(1, 20), LengthUnit::millimetre}).text == "2.00 mm");
  CHECK(shown(inches(0), thousandths).text == "0.000 in");
}

TEST_CASE("What is shown is never further off than half a mark, and says so exactly", "[measure]") {
  const bool holds = rc::check("any length, any marks", [] {
    const Inches length = inches(*rc::gen::inRange(-100'000, 100'000), *rc::gen::inRange(1, 5'000));
    const Length marks{fraction(*rc::gen::inRange(1, 9), *rc::gen::element(2, 10, 16, 20, 64, 1000)),
                       *rc::gen::element(LengthUnit::inch, LengthUnit::millimetre)};
    const Shown seen = shown(length, marks);
    const bool below = seen.text[0] == '-';
    const Inches read = in_inches(*read_length_with_unit(std::string_view(seen.text).substr(below ? 1 : 0)));
    RC_ASSERT((below ? -read : read) + seen.off == length);
    const Inches half = in_inches(marks) * fraction(1, 2);
    RC_ASSERT(seen.off <= half && -half <= seen.off);
  });
  CHECK(holds);
}
