#pragma once
// Lengths as text.
#include <string>

#include "core/measure/length.h"

namespace wm {

/// Exactly, in its own unit, so that reading it gives an equal length: "1 3/8 in" where an inch is parted by
/// twos, else decimals ("0.992 in", "25.2 mm"), else a fraction ("10/127 in").
std::string to_text(const Length& length);
/// Exactly, in the unit that it was most likely written in: inches where they have an end ("1/8 in", "0.992
/// in"), else millimetres where those do ("4 mm"), else a fraction of an inch.
std::string to_text(const Inches& length);
/// "90 deg", "0.5 deg".
std::string to_text(const Degrees& angle);

/// What an instrument shows: the nearest of its marks, halves away from zero.
struct Shown {
  std::string text;  // "1 3/8 in", "0.990 in": as finely as its marks part the unit
  Inches off;        // how much the length is over what is shown; below zero: under; zero: shown exactly
  friend bool operator==(const Shown&, const Shown&) = default;
};

/// `marks`: how far apart its marks are, above zero: 1/16 in, 0.001 in, 0.1 mm.
Shown shown(const Inches& length, const Length& marks);

}  // namespace wm
