#include "core/measure/fraction.h"

#include <algorithm>
#include <cassert>

namespace wm {
namespace {

/// How often `factor` divides it; what is left stays in `number`.
unsigned divided_out(Whole& number, unsigned factor) {
  const Whole by = factor;
  return static_cast<unsigned>(mpz_remove(number.get_mpz_t(), number.get_mpz_t(), by.get_mpz_t()));
}

}  // namespace

Fraction fraction(long numerator, long denominator) {
  assert(denominator != 0);
  Fraction made(Whole{numerator}, Whole{denominator});
  made.canonicalize();
  return made;
}

Whole floor_of(const Fraction& number) {
  Whole whole;
  mpz_fdiv_q(whole.get_mpz_t(), number.get_num_mpz_t(), number.get_den_mpz_t());
  return whole;
}

Whole ceil_of(const Fraction& number) {
  Whole whole;
  mpz_cdiv_q(whole.get_mpz_t(), number.get_num_mpz_t(), number.get_den_mpz_t());
  return whole;
}

Whole nearest_to(const Fraction& number) {
  const Fraction half = fraction(1, 2);
  return sgn(number) < 0 ? ceil_of(number - half) : floor_of(number + half);
}

std::string as_fraction(const Fraction& number) {
  const Fraction size = abs(number);
  const Whole whole = floor_of(size);
  const Fraction rest = size - whole;
  const std::string sign = sgn(number) < 0 ? "-" : "";
  if (rest == 0) return sign + whole.get_str();
  return sign + (whole == 0 ? "" : whole.get_str() + " ") + rest.get_str();
}

std::optional<unsigned> decimals_of(const Fraction& number) {
  Whole denominator = number.get_den();
  const unsigned twos = divided_out(denominator, 2), fives = divided_out(denominator, 5);
  return denominator == 1 ? std::optional(std::max(twos, fives)) : std::nullopt;
}

std::string as_decimal(const Fraction& number, unsigned decimals) {
  Whole power;
  mpz_ui_pow_ui(power.get_mpz_t(), 10, decimals);
  const Fraction last_digits = abs(number) * power;
  assert(last_digits.get_den() == 1);
  std::string digits = last_digits.get_num().get_str();
  if (digits.size() <= decimals) digits.insert(0, decimals + 1 - digits.size(), '0');
  if (decimals > 0) digits.insert(digits.size() - decimals, ".");
  return (sgn(number) < 0 ? "-" : "") + digits;
}

}  // namespace wm
