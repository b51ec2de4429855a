#include "core/teach/measure.h"

#include <algorithm>

#include "core/measure/read.h"
#include "core/teach/units.h"

namespace wm::teach {
namespace {

/// The number with a unit that is no length's behind it, if it is one.
std::optional<Measure> with_other_unit(std::string_view typed) {
  for (const OtherUnit& each : other_units) {
    const auto number = without_word(typed, each.word);
    if (!number) continue;
    if (const auto read = read_number(*number)) return Measure{*read, each.unit};
  }
  return std::nullopt;
}

Expected<Measure> as_length(const Expected<Length>& read) {
  if (!read) return tl::unexpected(read.error());
  return Measure{read->amount, unit_of(read->unit)};
}

/// Whether inches, feet and bare numbers are parted by twos, which people write as a fraction.
bool by_twos(const Measure& measure) {
  return (measure.unit == Unit::inch || measure.unit == Unit::foot || measure.unit == Unit::none) &&
         mpz_popcount(measure.value.get_den_mpz_t()) == 1;
}

std::string amount_text(const Measure& measure) {
  constexpr unsigned most_decimals = 9;  // as many as are read
  const auto decimals = decimals_of(measure.value);
  if (by_twos(measure) || !decimals || *decimals > most_decimals) return as_fraction(measure.value);
  return as_decimal(measure.value, *decimals);
}

}  // namespace

Expected<Measure> read_measure(std::string_view typed, Unit otherwise) {
  if (const auto read = with_other_unit(typed)) return *read;
  if (const auto plain = length_unit(otherwise)) return as_length(read_length(typed, *plain));
  if (const auto number = read_number(typed)) return Measure{*number, otherwise};
  return as_length(read_length_with_unit(typed));
}

std::string to_text(const Measure& measure) {
  const std::string unit(word(measure.unit));
  return amount_text(measure) + (unit.empty() ? "" : " ") + unit;
}

bool same_dimension(Unit a, Unit b) {
  const auto dimension = [](Unit unit) {
    if (length_unit(unit)) return Unit::inch;
    return unit == Unit::minute || unit == Unit::hour ? Unit::second : unit;
  };
  return dimension(a) == dimension(b);
}

Fraction in_base_unit(const Measure& measure) {
  if (const auto unit = length_unit(measure.unit)) return in_inches({measure.value, *unit}).count;
  const int seconds = measure.unit == Unit::hour ? 3600 : measure.unit == Unit::minute ? 60 : 1;
  return measure.value * seconds;
}

}  // namespace wm::teach
