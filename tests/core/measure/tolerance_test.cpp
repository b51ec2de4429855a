// Tolerances, judged to the very edge, and whether the instrument can tell.
#include "core/measure/tolerance.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

const Tolerance inch_give_or_take_64th{fraction(63, 64), fraction(65, 64)};
const Instrument caliper{fraction(1, 1000)};

}  // namespace

TEST_CASE("A measure at the edge of its tolerance is within it, and one beyond is out by how much",
          "[measure]") {
  const auto judged = [](const Fraction& read) { return judge(read, inch_give_or_take_64th, caliper); };
  CHECK(judged(fraction(1)) == Judged{Verdict::within, 0, true});
  CHECK(judged(fraction(65, 64)) == Judged{Verdict::within, 0, false});
  CHECK(judged(fraction(63, 64)) == Judged{Verdict::within, 0, false});
  CHECK(judged(fraction(1016, 1000)) ==
        Judged{Verdict::over, fraction(1016, 1000) - fraction(65, 64), false});
  CHECK(judged(fraction(984, 1000)) == Judged{Verdict::under, fraction(63, 64) - fraction(984, 1000), false});
  CHECK(judged(fraction(11, 10)).sure);
  // 0.1 + 0.2 is 0.3 here.
  CHECK(judge(fraction(1, 10) + fraction(2, 10), {fraction(0), fraction(3, 10)}, caliper).verdict ==
        Verdict::within);
}

TEST_CASE("A judgement is sure exactly where everything that may lie behind the reading is judged alike",
          "[measure]") {
  // Counted in quarters of a mark, by trying every real size that the reading allows.
  std::size_t wrong = 0;
  for (const ReadAs as : {ReadAs::nearest, ReadAs::at_least})
    for (long low = -6; low <= 6; ++low)
      for (long high = low; high <= 8; ++high)
        for (long read = -12; read <= 14; ++read) {
          const auto place = [&](long real) { return real < low ? -1 : real > high ? 1 : 0; };
          bool alike = true;
          for (long real = as == ReadAs::nearest ? read - 2 : read;
               real <= read + (as == ReadAs::nearest ? 2 : 4); ++real)
            alike = alike && place(real) == place(read);
          const Judged judged =
              judge(fraction(read, 4), {fraction(low, 4), fraction(high, 4)}, {fraction(1), as});
          wrong += judged.sure != alike;
          wrong += static_cast<int>(judged.verdict) != (place(read) == 0 ? 0 : place(read) < 0 ? 1 : 2);
        }
  CHECK(wrong == 0);
}

TEST_CASE("An instrument is too coarse where none of its readings could be surely within", "[measure]") {
  std::size_t wrong = 0;
  for (const ReadAs as : {ReadAs::nearest, ReadAs::at_least})
    for (long width = 0; width <= 12; ++width) {
      const Tolerance tolerance{fraction(0), fraction(width, 4)};
      const Instrument instrument{fraction(1), as};
      bool could = false;
      for (long read = -80; read <= 80; ++read) {
        const Judged judged = judge(fraction(read, 16), tolerance, instrument);
        could = could || (judged.verdict == Verdict::within && judged.sure);
      }
      wrong += too_coarse(instrument, tolerance) == could;
    }
  CHECK(wrong == 0);
}
