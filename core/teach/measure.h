#pragma once
// What the answer to a number question may be: a bare number, or one with a unit. Lengths are read and kept
// as in core/measure; the other units of a shop are added here.
#include <string>
#include <string_view>

#include "core/measure/fraction.h"
#include "core/problem.h"

namespace wm::teach {

enum class Unit { none, inch, foot, millimetre, centimetre, degree, percent, second, minute, hour, rpm };

struct Measure {
  Fraction value;
  Unit unit = Unit::none;
  friend bool operator==(const Measure&, const Measure&) = default;
};

/// Whether the one can be said in the other: lengths with lengths, times with times.
bool same_dimension(Unit a, Unit b);
/// The value in one unit of its dimension, the same for all: inches, seconds; else as it is.
Fraction in_base_unit(const Measure& measure);

/// Reads a number (core/measure/read.h) with a unit behind it or none, which then is `otherwise`. A fraction
/// without a unit is refused where `otherwise` is a length, but no inch: it may well have been meant as
/// inches.
Expected<Measure> read_measure(std::string_view typed, Unit otherwise = Unit::none);

/// In a form that reads back equal: "1 3/8 in", "3.2 mm", "90 degrees".
std::string to_text(const Measure& measure);

}  // namespace wm::teach
