#pragma once
// Lengths: exact, in inches to reckon with, and as a person writes them.
#include <string>

#include "core/measure/fraction.h"

namespace wm {

/// A length, or a difference of lengths, in inches; an inch is 25.4 mm exactly (agreement of 1959).
struct Inches {
  Fraction count;
  friend bool operator==(const Inches&, const Inches&) = default;
  friend std::strong_ordering operator<=>(const Inches& a, const Inches& b) {
    return in_order(a.count, b.count);
  }
};

Inches operator+(const Inches& a, const Inches& b);
Inches operator-(const Inches& a, const Inches& b);
Inches operator-(const Inches& a);
Inches operator*(const Inches& a, const Fraction& times);
Fraction operator/(const Inches& a, const Inches& b);  // b is not 0

/// `numerator`/`denominator` of an inch, and of a millimetre.
Inches inches(long numerator, long denominator = 1);
Inches millimetres(long numerator, long denominator = 1);

/// No metre and no prime for feet: each is one slip of the finger from another unit, and far from it in size.
enum class LengthUnit { inch, foot, millimetre, centimetre };
/// "in", "ft", "mm", "cm".
std::string_view word(LengthUnit unit);
Inches one(LengthUnit unit);

/// A length as it is written: so many of a unit. 25.4 mm and 1 in are not equal as that.
struct Length {
  Fraction amount;
  LengthUnit unit = LengthUnit::inch;
  friend bool operator==(const Length&, const Length&) = default;
};

Inches in_inches(const Length& length);
Length in_unit(const Inches& length, LengthUnit unit);

/// An angle, in degrees.
struct Degrees {
  Fraction count;
  friend bool operator==(const Degrees&, const Degrees&) = default;
};

}  // namespace wm
