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
  return one(Unit::millimetre) * fraction(numerator, denominator);
}

std::string_view word(Unit unit) {
  switch (unit) {
    case Unit::inch:
      return "in";
    case Unit::foot:
      return "ft";
    case Unit::millimetre:
      return "mm";
    case Unit::centimetre:
      return "cm";
  }
  return "";
}

Inches one(Unit unit) {
  switch (unit) {
    case Unit::inch:
      return inches(1);
    case Unit::foot:
      return inches(12);
    case Unit::millimetre:
      return inches(10, 254);
    case Unit::centimetre:
      return inches(100, 254);
  }
  return inches(0);
}

Inches in_inches(const Length& length) { return one(length.unit) * length.amount; }
Length in_unit(const Inches& length, Unit unit) { return {length / one(unit), unit}; }

}  // namespace wm
