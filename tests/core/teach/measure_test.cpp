// Numbers as people type them, with and without a unit.
#include "core/teach/measure.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

namespace {

using wm::fraction;
using namespace wm::teach;

Measure read(std::string_view typed, Unit otherwise = Unit::none) {
  const auto measure = read_measure(typed, otherwise);
  INFO(typed);
  REQUIRE(measure);
  return *measure;
}

bool refused(std::string_view typed) {
  const auto measure = read_measure(typed);
  if (measure) return false;
  CHECK_FALSE(measure.error().what.empty());
  CHECK_FALSE(measure.error().remedy.empty());
  return true;
}

}  // namespace

TEST_CASE("An eighth of an inch is the same number however it is typed", "[teach]") {
  const Measure eighth{fraction(1, 8), Unit::inch};
  for (const char* typed : {"1/8 in", "0.125 in", ".125in", "1/8\"", "1/8 inch", " 1/8  IN. ", "2/16 inches",
                            "⅛ in", "0,125 in", "1\u20448 in", "1/8\u00A0in", "1/8″", "00.1250 in"})
    CHECK(read(typed) == eighth);
  CHECK(read("1/8", Unit::inch) == eighth);
  CHECK(read("1-3/8 in") == Measure{fraction(11, 8), Unit::inch});
  CHECK(read("3,2 mm") == Measure{fraction(16, 5), Unit::millimetre});
  CHECK(read("3.2", Unit::millimetre) == Measure{fraction(16, 5), Unit::millimetre});
  CHECK(read("30 mm", Unit::inch).unit == Unit::millimetre);
  // It may well have been meant as inches.
  CHECK_FALSE(read_measure("1/8", Unit::millimetre));
}

TEST_CASE("A bare number and one with a unit that is no length's are read as they are typed", "[teach]") {
  CHECK(read("1 3/8") == Measure{fraction(11, 8), Unit::none});
  CHECK(read("-1 1/2") == Measure{fraction(-3, 2), Unit::none});
  CHECK(read("90") == Measure{90, Unit::none});
  for (const char* typed : {"90 degrees", "90°", "90 deg", "90 Degree", "90 deg.", " 90\u00A0° "})
    CHECK(read(typed) == Measure{90, Unit::degree});
  CHECK(read("90", Unit::degree) == Measure{90, Unit::degree});
  CHECK(read("−5 °") == Measure{-5, Unit::degree});
  CHECK(read("5 %") == Measure{5, Unit::percent});
  CHECK(read("5percent") == Measure{5, Unit::percent});
  CHECK(read("1/2 h") == Measure{fraction(1, 2), Unit::hour});
  CHECK(read("1,5 hours") == Measure{fraction(3, 2), Unit::hour});
  CHECK(read("5 min") == Measure{5, Unit::minute});
  CHECK(read("5 in") == Measure{5, Unit::inch});
  CHECK(read("30 s") == Measure{30, Unit::second});
  CHECK(read("5000 rpm", Unit::degree) == Measure{5000, Unit::rpm});
}

TEST_CASE("What could be two numbers, or is none, is not guessed at", "[teach]") {
  for (const char* typed :
       {"",          " ",       "in",      "%",     "1,250", "1,250 rpm",  "12,345 in",    "1.2.3", "1/0",
        "1/",        "/8 in",   "1 2 min", "1 9/8", "1/8/2", "--1",        "1.5/2",        "5,",    "1e3",
        "1 furlong", "1 in mm", "1 % h",   "0x10",  "one",   "1234567890", "1234567890 h", "5-",    "5 - 3",
        "½½",        "nan",     "inf",     "1\xFF", "-1 in", "degrees 5"})
    CHECK((refused(typed) || (UNSCOPED_INFO(typed), false)));
}

TEST_CASE("What can be said in one another's units is compared exactly", "[teach]") {
  const auto same = [](const char* a, const char* b) {
    return in_base_unit(read(a)) == in_base_unit(read(b));
  };
  CHECK(same("1 in", "25.4 mm"));  // agreement of 1959
  CHECK(same("1 in", "2.54 cm"));
  CHECK(same("1 ft", "12 in"));
  CHECK(same("1 h", "60 min"));
  CHECK(same("1 min", "60 s"));
  CHECK_FALSE(same("1 in", "25.400001 mm"));
  const Unit length[] = {Unit::inch, Unit::foot, Unit::millimetre, Unit::centimetre};
  const Unit time[] = {Unit::second, Unit::minute, Unit::hour};
  for (const Unit a : length)
    for (const Unit b : length) CHECK(same_dimension(a, b));
  for (const Unit a : time)
    for (const Unit b : time) CHECK(same_dimension(a, b));
  const Unit apart[] = {Unit::none, Unit::inch, Unit::degree, Unit::percent, Unit::second, Unit::rpm};
  for (const Unit a : apart)
    for (const Unit b : apart) CHECK(same_dimension(a, b) == (a == b));
}

TEST_CASE("Whatever number can be typed is written so that it reads back equal", "[teach]") {
  CHECK(rc::check([] {
    const auto over =
        *rc::gen::oneOf(rc::gen::inRange(1L, 1'000'000'000L),
                        rc::gen::element(1L, 2L, 8L, 64L, 1024L, 536'870'912L, 10L, 1000L, 1'000'000L));
    const auto top = *rc::gen::inRange(0L, 1'000'000'000L);
    const auto unit = static_cast<Unit>(*rc::gen::inRange(0, 11));
    const bool negative = !same_dimension(unit, Unit::inch) && *rc::gen::arbitrary<bool>();
    const Measure number{fraction(negative ? -top : top, over), unit};
    const auto again = read_measure(to_text(number));
    RC_ASSERT(again.has_value());
    RC_ASSERT(*again == number);
  }));
  CHECK(to_text({fraction(11, 8), Unit::inch}) == "1 3/8 in");
  CHECK(to_text({fraction(16, 5), Unit::millimetre}) == "3.2 mm");
  CHECK(to_text({fraction(-1, 1000), Unit::degree}) == "-0.001 degrees");
  CHECK(to_text({fraction(1, 3), Unit::millimetre}) == "1/3 mm");
  CHECK(to_text({fraction(1, 1024), Unit::millimetre}) == "1/1024 mm");
  CHECK(to_text({90, Unit::percent}) == "90 %");
}

TEST_CASE("Whatever bytes are typed are read or refused, never more", "[teach]") {
  CHECK(rc::check([](const std::string& bytes) { (void)read_measure(bytes); }));
  CHECK(rc::check([] {
    (void)read_measure(
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789.,/-+ in\"m½"))));
  }));
}
