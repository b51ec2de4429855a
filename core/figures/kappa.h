#pragma once
// What both kappas have in common.
#include "core/figures/agreement.h"

namespace wm::stats {

/// Chance as good as certain: what is left to agree on beyond it is rounding.
bool chance_is_all(double expected);

/// From the agreement seen and expected, and the errors.
Kappa kappa_of(double observed, double expected, double error, double error_by_chance, double z);

}  // namespace wm::stats
