#pragma once
// What a line of a run sheet asks to be measured, and what was measured there.
#include <array>
#include <optional>
#include <string_view>
#include <variant>

#include "core/measure/read.h"
#include "core/measure/tolerance.h"

namespace wm {

enum class MeasureKind { thickness, width, length, depth, angle, squareness, flatness };
inline constexpr std::array measure_kinds = {
    MeasureKind::thickness, MeasureKind::width,      MeasureKind::length,  MeasureKind::depth,
    MeasureKind::angle,     MeasureKind::squareness, MeasureKind::flatness};
std::string_view word(MeasureKind kind);

/// A thickness, width, length or depth: from `nominal - below` to `nominal + above`.
struct SizeToMeasure {
  Length nominal, below, above;
  Length marks;  // how far the instrument's marks are apart
  friend bool operator==(const SizeToMeasure&, const SizeToMeasure&) = default;
};

/// An angle, as with a protractor at the fence.
struct AngleToMeasure {
  Degrees nominal, below, above, marks;
  friend bool operator==(const AngleToMeasure&, const AngleToMeasure&) = default;
};

/// A gap under a square's blade or a straightedge: the thickest feeler that goes in anywhere along `over`.
struct GapToMeasure {
  Length at_most, over;
  Length marks;  // from one feeler to the next
  friend bool operator==(const GapToMeasure&, const GapToMeasure&) = default;
};

struct Measure {
  MeasureKind kind = MeasureKind::thickness;
  std::variant<SizeToMeasure, AngleToMeasure, GapToMeasure> what;  // as the kind has it
  friend bool operator==(const Measure&, const Measure&) = default;
};

/// Nothing filled in yet, of what such a kind has.
Measure of_kind(MeasureKind kind);
/// What a reading without a unit is in: that of `nominal` or `at_most`. Of no meaning for an angle.
LengthUnit unit_of(const Measure& measure);

/// One reading: in inches, or in degrees where an angle is measured.
struct Measured {
  Fraction read;
  Fraction marks;  // of the instrument that was used
  friend bool operator==(const Measured&, const Measured&) = default;
};

/// What stands in a line's field, with the instrument that the line names. Without a unit it is in that of
/// the line.
Expected<Measured> read_measured(const Measure& measure, std::string_view typed,
                                 DecimalMark mark = DecimalMark::point);

/// In inches or degrees.
Tolerance tolerance_of(const Measure& measure);
Instrument instrument_of(const Measure& measure);

Judged judge(const Measure& measure, const Measured& measured);
/// Whether the instrument used can't tell: then nothing has been measured yet.
bool too_coarse(const Measure& measure, const Measured& measured);

}  // namespace wm
