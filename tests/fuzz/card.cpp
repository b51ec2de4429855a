// A limits card that is taken is written out and read again as the same, and its plan cuts no deeper than it
// allows; one that is not taken is told why.
#include "core/passes/json.h"
#include "core/passes/plane.h"
#include "tests/fuzz/holds.h"

namespace {

using namespace wm;

/// A plank with a quarter of an inch to come off.
void is_planned_within(const PlanerCard& card) {
  const Stock plank{inches(96), inches(5), inches(5, 4), inches(1, 64), inches(1), inches(1, 1000)};
  const auto plan = plan_passes(card, plank);
  if (!plan) return fuzz::is_told(plan.error());
  fuzz::holds(plan->passes.size() < 300, "nobody is asked for hundreds of passes");
  for (const Pass& pass : plan->passes)
    fuzz::holds(pass.most <= plan->deepest, "no pass can cut deeper than the card allows");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto planer = read_planer_card(fuzz::text(data, size));
  if (planer) {
    fuzz::holds(read_planer_card(to_json(*planer)) == *planer, "what is read again is what was read");
    is_planned_within(*planer);
  } else {
    fuzz::is_told(planer.error());
  }
  const auto jointer = read_jointer_card(fuzz::text(data, size));
  if (jointer) {
    fuzz::holds(read_jointer_card(to_json(*jointer)) == *jointer, "what is read again is what was read");
  } else {
    fuzz::is_told(jointer.error());
  }
  return 0;
}
