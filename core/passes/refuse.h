#pragma once
// What is refused of any stock, on a planer or a jointer.
#include <string>

#include "core/passes/card.h"

namespace wm {

/// "5 in", "0.992 in".
std::string in_words(const Inches& length);

/// The deepest pass for a cut so wide in stock so long; else why there is none. Any mistake of the card comes
/// first.
Expected<Inches> deepest_pass(const LimitsCard& limits, const std::vector<Problem>& mistakes,
                              const Inches& length, const Inches& width);

}  // namespace wm
