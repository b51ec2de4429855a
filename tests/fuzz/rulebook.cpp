// A rulebook that is taken is written out, and read again as the same; one that is not taken is told why.
#include "core/rulebook/json.h"
#include "tests/fuzz/holds.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const auto rulebook = read_rulebook(fuzz::text(data, size));
  if (!rulebook) {
    fuzz::is_told(rulebook.error());
    return 0;
  }
  const std::string written = to_json(*rulebook);
  const auto again = read_rulebook(written);
  fuzz::holds(again.has_value(), "what was written is read again");
  fuzz::holds(*again == *rulebook, "what is read again is what was read");
  fuzz::holds(to_json(*again) == written, "the same rulebook is written with the same bytes");
  fuzz::holds(mistakes_in(*rulebook).empty(), "a rulebook that was taken has no mistake in it");
  return 0;
}
