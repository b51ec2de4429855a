// A length that is taken is written out and read again as the same; one that is not is told why.
#include "core/measure/read.h"
#include "core/measure/show.h"
#include "tests/fuzz/holds.h"

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
    const Inches off = shown(in_inches(*length), marks).off;
    const Inches half = inches(1, 128);
    fuzz::holds(off <= half && -half <= off, "what is shown is half a mark off at most");
  }
  return 0;
}
