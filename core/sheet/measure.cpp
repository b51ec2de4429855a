#include "core/sheet/measure.h"

namespace wm {
namespace {

const Fraction& counted(const Inches& length) { return length.count; }
Fraction counted(const Length& length) { return counted(in_inches(length)); }
const Fraction& counted(const Degrees& angle) { return angle.count; }

template <class About>
Tolerance about(const About& what) {
  return {counted(what.nominal) - counted(what.below), counted(what.nominal) + counted(what.above)};
}

Instrument used(const Measure& measure, const Measured& measured) {
  return {measured.marks, instrument_of(measure).read};
}

}  // namespace

std::string_view word(MeasureKind kind) {
  switch (kind) {
    case MeasureKind::thickness:
      return "thickness";
    case MeasureKind::width:
      return "width";
    case MeasureKind::length:
      return "length";
    case MeasureKind::depth:
      return "depth";
    case MeasureKind::angle:
      return "angle";
    case MeasureKind::squareness:
      return "squareness";
    case MeasureKind::flatness:
      return "flatness";
  }
  return "";
}

Measure of_kind(MeasureKind kind) {
  switch (kind) {
    case MeasureKind::thickness:
    case MeasureKind::width:
    case MeasureKind::length:
    case MeasureKind::depth:
      return {kind, SizeToMeasure{}};
    case MeasureKind::angle:
      return {kind, AngleToMeasure{}};
    case MeasureKind::squareness:
    case MeasureKind::flatness:
      return {kind, GapToMeasure{}};
  }
  return {};
}

LengthUnit unit_of(const Measure& measure) {
  if (const auto* gap = std::get_if<GapToMeasure>(&measure.what)) return gap->at_most.unit;
  if (const auto* size = std::get_if<SizeToMeasure>(&measure.what)) return size->nominal.unit;
  return LengthUnit::inch;
}

Expected<Measured> read_measured(const Measure& measure, std::string_view typed, DecimalMark mark) {
  const auto with_instrument = [&](const Fraction& read) {
    return Measured{read, instrument_of(measure).marks};
  };
  if (measure.kind == MeasureKind::angle)
    return read_degrees(typed, mark).map([&](const Degrees& read) { return with_instrument(read.count); });
  return read_length(typed, unit_of(measure), mark).map([&](const Length& read) {
    return with_instrument(counted(read));
  });
}

Tolerance tolerance_of(const Measure& measure) {
  if (const auto* size = std::get_if<SizeToMeasure>(&measure.what)) return about(*size);
  if (const auto* angle = std::get_if<AngleToMeasure>(&measure.what)) return about(*angle);
  return {0, counted(in_inches(std::get<GapToMeasure>(measure.what).at_most))};
}

Instrument instrument_of(const Measure& measure) {
  if (const auto* gap = std::get_if<GapToMeasure>(&measure.what))
    return {counted(gap->marks), ReadAs::at_least};
  if (const auto* size = std::get_if<SizeToMeasure>(&measure.what))
    return {counted(size->marks), ReadAs::nearest};
  return {counted(std::get<AngleToMeasure>(measure.what).marks), ReadAs::nearest};
}

Judged judge(const Measure& measure, const Measured& measured) {
  return judge(measured.read, tolerance_of(measure), used(measure, measured));
}

bool too_coarse(const Measure& measure, const Measured& measured) {
  return too_coarse(used(measure, measured), tolerance_of(measure));
}

}  // namespace wm
