#pragma once
// Measures as they were typed at a run sheet, and as they are kept: texts, so that a record says years later
// what a person read, whatever the sheet has become since.
#include <span>
#include <string_view>
#include <vector>

#include "core/sheet/line_measured.h"
#include "core/sheet/result.h"

namespace wm {

/// What was typed at a line, understood. `marks`: those of the instrument, as typed; empty where it was the
/// one that the line names. `where` of a Problem is "measure" or "instrument", and the character.
Expected<LineMeasured> understood(const Measure& measure, int line, std::string_view typed,
                                  std::string_view marks = {}, DecimalMark mark = DecimalMark::point);

/// What such texts say; refused where they are no reading of such a measure.
Expected<Measured> measured_of(const Measure& measure, const LineMeasured& line);

/// Whether `read` and `marks` name a length or an angle with its unit, both of one kind, the marks are some,
/// and what was typed can be read as that, in whatever unit and language: what can be told without the sheet.
bool is_measured(const LineMeasured& line);

/// By line, as result_of asks for it; nothing where a line measures nothing, or something else.
std::vector<MaybeMeasured> by_line(const Sheet& sheet, std::span<const LineMeasured> measured);

}  // namespace wm
