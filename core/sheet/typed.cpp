#include "core/sheet/typed.h"

#include "core/measure/show.h"

namespace wm {
namespace {

Problem placed(const char* where, Problem problem) {
  problem.where = std::string(where) + ", " + problem.where;
  return problem;
}

Problem no_marks() {
  return {"instrument", "An instrument has marks that are some way apart.",
          "Type how far, such as 0.001 in or 0.1 mm."};
}

/// One text of a line, as a number in inches or degrees and as it is kept.
struct Understood {
  Fraction count;
  std::string text;
};

Expected<Understood> understood_one(const Measure& measure, std::string_view typed, DecimalMark mark) {
  if (measure.kind == MeasureKind::angle)
    return read_degrees(typed, mark).map([](const Degrees& angle) {
      return Understood{angle.count, to_text(angle)};
    });
  return read_length(typed, unit_of(measure), mark).map([](const Length& length) {
    return Understood{in_inches(length).count, to_text(length)};
  });
}

std::string own_marks(const Measure& measure) {
  if (const auto* size = std::get_if<SizeToMeasure>(&measure.what)) return to_text(size->marks);
  if (const auto* gap = std::get_if<GapToMeasure>(&measure.what)) return to_text(gap->marks);
  return to_text(std::get<AngleToMeasure>(measure.what).marks);
}

/// A text that is kept: it names its unit.
std::optional<Fraction> kept(bool angle, std::string_view text) {
  if (angle) {
    const auto read = read_degrees(text);
    return read && text.ends_with(" deg") ? std::optional(read->count) : std::nullopt;
  }
  const auto read = read_length_with_unit(text);
  return read ? std::optional(in_inches(*read).count) : std::nullopt;
}

std::optional<Measured> kept(bool angle, const LineMeasured& line) {
  const auto read = kept(angle, line.read), marks = kept(angle, line.marks);
  if (!read || !marks || *marks <= 0) return std::nullopt;
  return Measured{*read, *marks};
}

bool typed_as_length(const LineMeasured& line) {
  for (const DecimalMark mark : {DecimalMark::point, DecimalMark::comma})
    for (const LengthUnit unit :
         {LengthUnit::inch, LengthUnit::foot, LengthUnit::millimetre, LengthUnit::centimetre})
      if (const auto length = read_length(line.typed, unit, mark); length && to_text(*length) == line.read)
        return true;
  return false;
}

bool typed_as_angle(const LineMeasured& line) {
  for (const DecimalMark mark : {DecimalMark::point, DecimalMark::comma})
    if (const auto angle = read_degrees(line.typed, mark); angle && to_text(*angle) == line.read) return true;
  return false;
}

}  // namespace

Expected<LineMeasured> understood(const Measure& measure, int line, std::string_view typed,
                                  std::string_view marks, DecimalMark mark) {
  const auto read = understood_one(measure, typed, mark);
  if (!read) return tl::make_unexpected(placed("measure", read.error()));
  if (marks.empty()) return LineMeasured{line, std::string(typed), read->text, own_marks(measure)};
  const auto apart = understood_one(measure, marks, mark);
  if (!apart) return tl::make_unexpected(placed("instrument", apart.error()));
  if (apart->count <= 0) return tl::make_unexpected(no_marks());
  return LineMeasured{line, std::string(typed), read->text, apart->text};
}

Expected<Measured> measured_of(const Measure& measure, const LineMeasured& line) {
  if (const auto measured = kept(measure.kind == MeasureKind::angle, line)) return *measured;
  return tl::make_unexpected(Problem{"line " + std::to_string(line.line),
                                     "This line measures something else than '" + line.read + "'.",
                                     "Look at the sheet that was marked then."});
}

bool is_measured(const LineMeasured& line) {
  return (kept(false, line) && typed_as_length(line)) || (kept(true, line) && typed_as_angle(line));
}

std::vector<MaybeMeasured> by_line(const Sheet& sheet, std::span<const LineMeasured> measured) {
  const auto lines = lines_of(sheet);
  std::vector<MaybeMeasured> out(lines.size());
  for (const LineMeasured& one : measured) {
    const bool there = one.line >= 1 && static_cast<std::size_t>(one.line) <= lines.size();
    const SheetLine* line = there ? lines[static_cast<std::size_t>(one.line) - 1] : nullptr;
    if (line == nullptr || !line->measure) continue;
    if (const auto read = measured_of(*line->measure, one))
      out[static_cast<std::size_t>(one.line) - 1] = *read;
  }
  return out;
}

}  // namespace wm
