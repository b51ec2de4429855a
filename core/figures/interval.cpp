#include "core/figures/interval.h"

#include <cmath>

namespace wm::stats {

std::optional<Interval> wilson(std::size_t count, std::size_t of, double z) {
  if (of == 0) return std::nullopt;
  const double n = static_cast<double>(of), p = static_cast<double>(count) / n, z2 = z * z;
  const double middle = 2 * n * p + z2, half = z * std::sqrt(z2 + 4 * n * p * (1 - p)), over = 2 * (n + z2);
  // At the ends the limit is 0 or 1 itself, which the roundings of a root would miss.
  return Interval{count == 0 ? 0 : (middle - half) / over, count == of ? 1 : (middle + half) / over};
}

}  // namespace wm::stats
