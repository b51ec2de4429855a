#pragma once
// What a line measures, and what a reading there comes to, as words.
#include <QString>

#include "core/sheet/typed.h"

namespace wm::app {

/// "0.990 to 1.010 in", "0.003 in along 1 in"
QString tolerance_words(const Measure& measure);
/// The marks that the line's own instrument has: "0.001 in"
QString own_marks_words(const Measure& measure);
/// "thickness, 0.990 to 1.010 in"
QString asked_words(const Measure& measure);
/// "25.2 mm is within 25.0 to 25.4 mm", "0.985 in is under 0.990 to 1.010 in, by 0.005 in"; whether the
/// instrument can tell is added. `line` is of that measure.
QString judged_words(const Measure& measure, const LineMeasured& line);

}  // namespace wm::app
