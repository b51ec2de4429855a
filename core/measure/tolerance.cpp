#include "core/measure/tolerance.h"

namespace wm {
namespace {

Verdict verdict_of(const Fraction& measure, const Tolerance& tolerance) {
  if (measure < tolerance.low) return Verdict::under;
  return measure > tolerance.high ? Verdict::over : Verdict::within;
}

/// The least and the most that may really be there.
Tolerance behind(const Fraction& read, const Instrument& instrument) {
  if (instrument.read == ReadAs::at_least) return {read, read + instrument.marks};
  const Fraction half = instrument.marks / 2;
  return {read - half, read + half};
}

Fraction outside_by(const Fraction& read, const Tolerance& tolerance, Verdict verdict) {
  switch (verdict) {
    case Verdict::within:
      return 0;
    case Verdict::under:
      return tolerance.low - read;
    case Verdict::over:
      return read - tolerance.high;
  }
  return 0;
}

}  // namespace

Judged judge(const Fraction& read, const Tolerance& tolerance, const Instrument& instrument) {
  const Verdict verdict = verdict_of(read, tolerance);
  const Tolerance real = behind(read, instrument);
  const bool sure = verdict_of(real.low, tolerance) == verdict && verdict_of(real.high, tolerance) == verdict;
  return {verdict, outside_by(read, tolerance, verdict), sure};
}

bool too_coarse(const Instrument& instrument, const Tolerance& tolerance) {
  return instrument.marks > tolerance.high - tolerance.low;
}

}  // namespace wm
