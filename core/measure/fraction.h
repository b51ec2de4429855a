#pragma once
// Exact fractions: a thickness at the very edge of its tolerance is within it, which no binary number can
// tell.
#include <gmpxx.h>

#include <compare>
#include <optional>
#include <string>

namespace wm {

/// Without bound and in lowest terms. Arithmetic yields GMP's expressions, which refer to their operands:
/// name the type where a result is kept, never `auto`.
using Fraction = mpq_class;
/// GMP's whole numbers, as floors and ceilings are.
using Whole = mpz_class;

/// `denominator` is not 0.
Fraction fraction(long numerator, long denominator = 1);

inline std::strong_ordering in_order(const Fraction& a, const Fraction& b) { return cmp(a, b) <=> 0; }

/// The greatest whole number not above it, and the least not below it.
Whole floor_of(const Fraction& number);
Whole ceil_of(const Fraction& number);
/// The nearest whole number, halves away from zero.
Whole nearest_to(const Fraction& number);

/// "1 3/8", "3/8", "-1 3/8", "2".
std::string as_fraction(const Fraction& number);
/// How many digits after the point write it exactly; none where no number of them does, as for 1/3.
std::optional<unsigned> decimals_of(const Fraction& number);
/// "0.992" of as many digits as asked; it must be a whole number of the last of them.
std::string as_decimal(const Fraction& number, unsigned decimals);

}  // namespace wm
