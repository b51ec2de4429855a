#pragma once
// Lengths and angles as they are read here.
#include <QString>

#include "core/measure/read.h"

namespace wm::app {

/// What this computer's language writes before the decimals.
DecimalMark decimal_mark();
/// A length or an angle as files have it ("25.2 mm", "90 deg"), as it is read here ("25,2 mm", "90°").
QString length_words(const std::string& kept);
/// Exactly, in the unit that it was most likely written in.
QString length_words(const Inches& length);

}  // namespace wm::app
