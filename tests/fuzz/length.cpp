// A length that is taken is written out and read again as the same; one that is not is told why.
#include "core/measure/read.h"
#include "core/measure/show.h"
#include "core/sheet/typed.h"
#include "tests/fuzz/holds.h"

namespace {

/// In millimetres, as the lengths are that are read here without a unit.
const wm::Measure thick{wm::MeasureKind::thickness,
                        wm::SizeToMeasure{{wm::fraction(25), wm::LengthUnit::millimetre},
                                          {wm::fraction(1), wm::LengthUnit::millimetre},
                                          {wm::fraction(1), wm::LengthUnit::millimetre},
                                          {wm::fraction(1, 10), wm::LengthUnit::millimetre}}};

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const std::string_view typed = fuzz::text(data, size);
  for (const DecimalMark mark : {DecimalMark::point, DecimalMark::comma}) {
    const auto number = read_number(typed, mark);
    if (!number) fuzz::is_told({number.error()});
    const auto length = read_length(typed, LengthUnit::millimetre, mark);
    if (!length) {
      fuzz::is_told({length.error()});
      continue;
    }
    fuzz::holds(read_length_with_unit(to_text(*length)) == *length, "what is read again is what was read");
    const Length marks{fraction(1, 64), LengthUnit::inch};
    const auto kept = understood(thick, 1, typed, {}, mark);
    fuzz::holds(kept && is_measured(*kept), "what was understood is a measure");
    const auto again = measured_of(thick, *kept);
    fuzz::holds(again && again->read == in_inches(*length).count, "and is read again as that");
    const Inches off = shown(in_inches(*length), marks).off;
    const Inches half = inches(1, 128);
    fuzz::holds(off <= half && -half <= off, "what is shown is half a mark off at most");
  }
  return 0;
}
