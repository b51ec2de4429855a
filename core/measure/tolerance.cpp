#include "core/measure/tolerance.h"

namespace wm {
namespace {

Place place_of(const Fraction& measure, const Tolerance& tolerance) {
  if (measure < tolerance.low) return Place::under;
  return measure > tolerance.high ? Place::over : Place::within;
}

/// The least and the most that may really be there.
Tolerance behind(const Fraction& read, const Instrument& instrument) {
  if (instrument.read == ReadAs::at_least) return {read, read + instrument.marks};
  const Fraction half = instrument.marks / 2;
  return {read - half, read + half};
}

Fraction outside_by(const Fraction& read, const Tolerance& tolerance, Place place) {
  switch (place) {
    case Place::within:
      return 0;
    case Place::under:
      return tolerance.low - read;
    case Place::over:
      return read - tolerance.high;
  }
  return 0;
}

}  // namespace

Judged judge(const Fraction& read, const Tolerance& tolerance, const Instrument& instrument) {
  const Place place = place_of(read, tolerance);
  const Tolerance real = behind(read, instrument);
  const bool sure = place_of(real.low, tolerance) == place && place_of(real.high, tolerance) == place;
  return {place, outside_by(read, tolerance, place), sure};
}

bool too_coarse(const Instrument& instrument, const Tolerance& tolerance) {
  return instrument.marks > tolerance.high - tolerance.low;
}

}  // namespace wm
