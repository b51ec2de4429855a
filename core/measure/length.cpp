#include "core/measure/length.h"

#include <cassert>

namespace wm {

Inches operator+(const Inches& a, const Inches& b) { return {a.count + b.count}; }
Inches operator-(const Inches& a, const Inches& b) { return {a.count - b.count}; }
Inches operator-(const Inches& a) { return {-a.count}; }
Inches operator*(const Inches& a, const Fraction& times) { return {a.count * times}; }

Fraction operator/(const Inches& a, const Inches& b) {
  assert(b.count != 0);
  return a.count / b.count;
}

Inches inches(long numerator, long denominator) { return {fraction(numerator, denominator)}; }

Inches millimetres(long numerator, long denominator) {
  return one(LengthUnit::millimetre) * fraction(numerator, denominator);
}

std::string_view word(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::inch:
      return "in";
    case LengthUnit::foot:
      return "ft";
    case LengthUnit::millimetre:
      return "mm";
    case LengthUnit::centimetre:
      return "cm";
  }
  return "";
}

Inches one(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::inch:
      return inches(1);
    case LengthUnit::foot:
      return inches(12);
    case LengthUnit::millimetre:
      return inches(10, 254);
    case LengthUnit::centimetre:
      return inches(100, 254);
  }
  return inches(0);
}

Inches in_inches(const Length& length) { return one(length.unit) * length.amount; }
Length in_unit(const Inches& length, LengthUnit unit) { return {length / one(unit), unit}; }

}  // namespace wm
