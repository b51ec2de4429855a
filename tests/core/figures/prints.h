#pragma once
// Figures against published ones.
#include <cmath>

/// Whether `value` rounds to what is printed, to the last of so many digits after the point.
inline bool prints(double value, double printed, int digits) {
  const double scale = std::pow(10, digits);
  return std::llround(value * scale) == std::llround(printed * scale);
}
