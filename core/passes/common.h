#pragma once
// What plans for planers and jointers have in common.
#include "core/passes/card.h"

namespace wm {

/// More passes than that are no plan that anybody would follow.
constexpr int most_passes = 200;
Problem too_many_passes(const char* where);

/// `total` in as few parts as `most` allows, as even as they come.
std::vector<Whole> evenly(Whole total, const Whole& most);
/// `length` in whole `steps`: not above it, and not below it.
Whole steps_within(const Inches& length, const Inches& steps);
Whole steps_around(const Inches& length, const Inches& steps);

/// The deepest pass for a cut so wide in stock so long; else why there is none. Any mistake of the card comes
/// first.
Expected<Inches> deepest_pass(const LimitsCard& limits, const std::vector<Problem>& mistakes,
                              const Inches& length, const Inches& width);

}  // namespace wm
