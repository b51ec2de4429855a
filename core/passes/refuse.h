#pragma once
// What is refused of any stock, on a planer or a jointer.
#include "core/passes/card.h"

namespace wm {

/// More passes than that are no plan that anybody would follow.
constexpr int most_passes = 200;
Problem too_many_passes(const char* where);

/// The deepest pass for a cut so wide in stock so long; else why there is none. Any mistake of the card comes
/// first.
Expected<Inches> deepest_pass(const LimitsCard& limits, const std::vector<Problem>& mistakes,
                              const Inches& length, const Inches& width);

}  // namespace wm
