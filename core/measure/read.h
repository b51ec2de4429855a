#pragma once
// Numbers and lengths as people type them: "1 3/8", "1-3/8\"", "1⅜", "0.992", "25.2 mm", "3,2 mm".
#include <string_view>

#include "core/measure/length.h"
#include "core/problem.h"

namespace wm {

/// What the reader's locale writes before the decimals. That mark always means decimals; the other one does
/// too, except where it could as well part thousands ("1,250" where decimals follow a point): that is
/// refused.
enum class DecimalMark { point, comma };

/// A whole number, a decimal, a fraction, or a whole number and a fraction; a minus may stand before it. Up
/// to nine digits before and after each mark. `where` of a Problem is "character N", counted from 1 in code
/// points.
Expected<Fraction> read_number(std::string_view text, DecimalMark mark = DecimalMark::point);

/// Such a number, not below zero, and its unit. Without a unit it is of `plain`; but a fraction without one
/// is refused where `plain` is no inch, since it may well have been meant as inches.
Expected<Length> read_length(std::string_view text, LengthUnit plain = LengthUnit::inch,
                             DecimalMark mark = DecimalMark::point);

/// The same without a unit to fall back on: for files, which say it.
Expected<Length> read_length_with_unit(std::string_view text);

/// An angle not below zero: "90", "90.5 deg", "89 1/2°".
Expected<Degrees> read_degrees(std::string_view text, DecimalMark mark = DecimalMark::point);

}  // namespace wm
