#pragma once
// Whether a measure is within its tolerance, by how much it is not, and whether the instrument can tell.
#include "core/measure/fraction.h"

namespace wm {

/// From `low` to `high`, both of them included; low <= high. In whatever the measure is in.
struct Tolerance {
  Fraction low, high;
  friend bool operator==(const Tolerance&, const Tolerance&) = default;
};

enum class Verdict { within, under, over };

/// How what was read lies to what is really there. `nearest`: half a mark off at most, as with a caliper.
/// `at_least`: what is there is no less than what was read, and less than one mark more, as with the thickest
/// feeler that goes in.
enum class ReadAs { nearest, at_least };

/// An instrument: how far its marks are apart (above zero), and how it is read.
struct Instrument {
  Fraction marks;
  ReadAs read = ReadAs::nearest;
  friend bool operator==(const Instrument&, const Instrument&) = default;
};

struct Judged {
  Verdict verdict = Verdict::within;
  Fraction by;        // how far outside; zero within
  bool sure = false;  // all that may really be there is judged alike
  friend bool operator==(const Judged&, const Judged&) = default;
};

/// The verdict is that of what was read, to the very edge.
Judged judge(const Fraction& read, const Tolerance& tolerance, const Instrument& instrument);

/// Whether no reading at all could be surely within: what may lie behind one reading is wider than the
/// tolerance.
bool too_coarse(const Instrument& instrument, const Tolerance& tolerance);

}  // namespace wm
