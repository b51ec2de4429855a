#include "core/measure/show.h"

#include <cassert>

namespace wm {
namespace {

/// Whether an inch is parted by twos here, which people write as a fraction.
bool by_twos(const Length& length) {
  const Whole parts = length.amount.get_den();
  return length.unit == LengthUnit::inch && mpz_popcount(parts.get_mpz_t()) == 1;
}

std::string amount_text(const Length& length) {
  constexpr unsigned most_decimals = 9;  // as many as are read
  const auto decimals = decimals_of(length.amount);
  if (by_twos(length) || !decimals || *decimals > most_decimals) return as_fraction(length.amount);
  return as_decimal(length.amount, *decimals);
}

/// A multiple of `marks`, with all the decimals that marks so far apart need.
std::string amount_text(const Length& multiple, const Length& marks) {
  const auto decimals = decimals_of(marks.amount);
  if (by_twos(marks) || !decimals) return as_fraction(multiple.amount);
  return as_decimal(multiple.amount, *decimals);
}

std::string with_unit(std::string amount, LengthUnit unit) { return amount + " " + std::string(word(unit)); }

}  // namespace

std::string to_text(const Length& length) { return with_unit(amount_text(length), length.unit); }

std::string to_text(const Inches& length) {
  const Length millimetres = in_unit(length, LengthUnit::millimetre);
  const bool in_millimetres = !decimals_of(length.count) && decimals_of(millimetres.amount);
  return to_text(in_millimetres ? millimetres : in_unit(length, LengthUnit::inch));
}

std::string to_text(const Degrees& angle) {
  const auto decimals = decimals_of(angle.count);
  return (decimals ? as_decimal(angle.count, *decimals) : as_fraction(angle.count)) + " deg";
}

Shown shown(const Inches& length, const Length& marks) {
  assert(marks.amount > 0);
  const Length exact = in_unit(length, marks.unit);
  const Length nearest{nearest_to(exact.amount / marks.amount) * marks.amount, marks.unit};
  return {with_unit(amount_text(nearest, marks), marks.unit), length - in_inches(nearest)};
}

}  // namespace wm
