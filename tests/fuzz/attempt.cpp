// An attempt that is taken is written out and read again as the same; one that is not is told why. What is
// typed in it is a number or is told why not.
#include "core/teach/attempt.h"
#include "core/teach/measure.h"
#include "tests/fuzz/holds.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const auto attempt = teach::read_attempt(fuzz::text(data, size));
  if (!attempt) {
    fuzz::is_told(attempt.error());
    return 0;
  }
  const auto again = teach::read_attempt(teach::to_json(*attempt));
  fuzz::holds(again.has_value(), "what was written is read again");
  fuzz::holds(*again == *attempt, "what is read again is what was read");
  for (const teach::Answer& answer : attempt->answers) {
    const auto* typed = std::get_if<teach::Typed>(&answer.given);
    if (typed == nullptr) continue;
    const auto read = teach::read_measure(typed->text);
    if (!read)
      fuzz::is_told({read.error()});
    else
      fuzz::holds(teach::read_measure(teach::to_text(*read)) == *read,
                  "a number is written so that it reads back");
  }
  return 0;
}
