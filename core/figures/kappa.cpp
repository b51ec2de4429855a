#include "core/figures/kappa.h"

#include <algorithm>

namespace wm::stats {

bool chance_is_all(double expected) { return expected > 1 - 1e-12; }

Kappa kappa_of(double observed, double expected, double error, double error_by_chance, double z) {
  constexpr double rounding = 1e-9;
  Kappa of{(observed - expected) / (1 - expected), observed, expected, error, error_by_chance, {}};
  if (error > rounding)
    of.interval = Interval{std::max(-1.0, of.kappa - z * error), std::min(1.0, of.kappa + z * error)};
  return of;
}

Strength strength_of(double kappa) {
  if (kappa < 0) return Strength::poor;
  if (kappa <= 0.20) return Strength::slight;
  if (kappa <= 0.40) return Strength::fair;
  if (kappa <= 0.60) return Strength::moderate;
  return kappa <= 0.80 ? Strength::substantial : Strength::almost_perfect;
}

}  // namespace wm::stats
