#pragma once
// The JSON form of run sheets, described once for reading (json::Fields) and writing (json::Writer).
#include <limits>

#include "core/json/writer.h"
#include "core/measure/form.h"
#include "core/sheet/sheet.h"

namespace wm {

std::string written(const Measure& measure);
std::string written(const SheetLine& line);
std::string written(const SheetSection& section);

namespace forms {

inline const auto measure_kind =
    json::one_of({MeasureKind::thickness, MeasureKind::width, MeasureKind::length, MeasureKind::depth,
                  MeasureKind::angle, MeasureKind::squareness, MeasureKind::flatness});

/// Text that fits on one line of the sheet.
std::optional<std::string> one_line(json::Reading& reading, json::Value value);
std::optional<Measure> measure(json::Reading& reading, json::Value value);
std::optional<std::vector<SheetLine>> sheet_lines(json::Reading& reading, json::Value value);
std::optional<std::vector<SheetSection>> sheet_sections(json::Reading& reading, json::Value value);

// Each says whether all of it could be read.
template <class A>
bool form(A& a, SizeToMeasure& m) {
  const bool nominal = a.need("nominal", m.nominal, some_length);
  const bool below = a.need("below", m.below, length), above = a.need("above", m.above, length);
  return a.need("instrument", m.marks, some_length) && nominal && below && above;
}
template <class A>
bool form(A& a, AngleToMeasure& m) {
  const bool nominal = a.need("nominal", m.nominal, some_degrees);
  const bool below = a.need("below", m.below, degrees), above = a.need("above", m.above, degrees);
  return a.need("instrument", m.marks, some_degrees) && nominal && below && above;
}
template <class A>
bool form(A& a, GapToMeasure& m) {
  const bool at_most = a.need("at_most", m.at_most, some_length), over = a.need("over", m.over, some_length);
  return a.need("instrument", m.marks, some_length) && at_most && over;
}

template <class A>
void form(A& a, Measure& m) {
  if (!a.need("kind", m.kind, measure_kind)) return a.give_up();
  if (m.what.index() != of_kind(m.kind).what.index()) m = of_kind(m.kind);
  const bool whole = std::visit([&](auto& what) { return form(a, what); }, m.what);
  if (!whole) return;
  a.refuse(too_coarse(instrument_of(m), tolerance_of(m)), "instrument",
           "The marks of this instrument are further apart than the tolerance is wide.",
           "Name a finer instrument, or allow more.");
}

template <class A>
void form(A& a, SheetLine& l) {
  a.need("text", l.text, one_line);
  a.may("says", l.says, {}, one_line);
  a.may("critical", l.critical, false, json::truth);
  a.may("measure", l.measure, measure);
}

template <class A>
void form(A& a, SheetSection& s) {
  a.need("section", s.name, one_line);
  a.need("lines", s.lines, sheet_lines);
}

template <class A>
void form(A& a, Sheet& s) {
  a.need("sheet", s.name, one_line);
  a.need("revision", s.revision, json::whole(1, std::numeric_limits<int>::max()));
  a.need("class", s.machine_class, one_line);
  a.need("checkout", s.checkout, one_line);
  a.may("title", s.title, {}, one_line);
  a.need("sections", s.sections, sheet_sections);
}

}  // namespace forms
}  // namespace wm
