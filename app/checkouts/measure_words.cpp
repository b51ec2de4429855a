#include "app/checkouts/measure_words.h"

#include <QCoreApplication>

#include "app/words/length_words.h"
#include "core/measure/show.h"

namespace wm::app {
namespace {

struct Measures {
  Q_DECLARE_TR_FUNCTIONS(Measures)
};

QString kind_words(MeasureKind kind) {
  switch (kind) {
    case MeasureKind::thickness:
      return Measures::tr("thickness");
    case MeasureKind::width:
      return Measures::tr("width");
    case MeasureKind::length:
      return Measures::tr("length");
    case MeasureKind::depth:
      return Measures::tr("depth");
    case MeasureKind::angle:
      return Measures::tr("angle");
    case MeasureKind::squareness:
      return Measures::tr("gap under the square");
    case MeasureKind::flatness:
      return Measures::tr("gap under the straightedge");
  }
  return {};
}

/// The marks that the line's own instrument has; null for an angle.
const Length* own_marks_of(const Measure& measure) {
  if (const auto* size = std::get_if<SizeToMeasure>(&measure.what)) return &size->marks;
  const auto* gap = std::get_if<GapToMeasure>(&measure.what);
  return gap ? &gap->marks : nullptr;
}

/// In the line's unit, as finely as its instrument shows it, or exactly where that is no mark of it.
std::string in_lines_unit(const Measure& measure, const Fraction& count) {
  const Length* marks = own_marks_of(measure);
  if (!marks) return to_text(Degrees{count});
  const Inches length{count};
  if (marks->unit == unit_of(measure))
    if (const Shown seen = shown(length, *marks); seen.off == inches(0)) return seen.text;
  return to_text(in_unit(length, unit_of(measure)));
}

/// Rounded to the line's marks where it is none of them, and then "about".
QString by_words(const Measure& measure, const Fraction& count) {
  const Length* marks = own_marks_of(measure);
  if (!marks) return length_words(to_text(Degrees{count}));
  const Shown seen = shown(Inches{count}, *marks);
  return seen.off == inches(0) ? length_words(seen.text)
                               : Measures::tr("about %1", "a length").arg(length_words(seen.text));
}

QString range_words(const std::string& low, const std::string& high) {
  const auto unit_at = [](const std::string& text) { return text.rfind(' '); };
  const bool one_unit = low.substr(unit_at(low)) == high.substr(unit_at(high));
  return Measures::tr("%1 to %2", "the ends of a tolerance")
      .arg(length_words(one_unit ? low.substr(0, unit_at(low)) : low), length_words(high));
}

/// "25.2 mm", and in the line's unit where it was read in another.
QString reading_words(const Measure& measure, const LineMeasured& line, const Measured& measured) {
  const QString read = length_words(line.read);
  const auto length = read_length_with_unit(line.read);
  const Length* marks = own_marks_of(measure);
  if (!length || !marks || length->unit == unit_of(measure)) return read;
  const Shown seen = shown(Inches{measured.read}, *marks);
  return Measures::tr("%1 (%2)", "a reading, and in another unit").arg(read, length_words(seen.text));
}

}  // namespace

QString tolerance_words(const Measure& measure) {
  const Tolerance tolerance = tolerance_of(measure);
  if (const auto* gap = std::get_if<GapToMeasure>(&measure.what))
    return Measures::tr("%1 along %2", "a gap allowed, and the length that it is looked for along")
        .arg(length_words(in_lines_unit(measure, tolerance.high)), length_words(to_text(gap->over)));
  return range_words(in_lines_unit(measure, tolerance.low), in_lines_unit(measure, tolerance.high));
}

QString own_marks_words(const Measure& measure) {
  const Length* marks = own_marks_of(measure);
  return length_words(marks ? to_text(*marks) : to_text(std::get<AngleToMeasure>(measure.what).marks));
}

QString asked_words(const Measure& measure) {
  const bool gap = std::holds_alternative<GapToMeasure>(measure.what);
  return (gap ? Measures::tr("%1, at most %2", "what is measured, its tolerance")
              : Measures::tr("%1, %2", "what is measured, its tolerance"))
      .arg(kind_words(measure.kind), tolerance_words(measure));
}

QString judged_words(const Measure& measure, const LineMeasured& line) {
  const auto measured = measured_of(measure, line);
  if (!measured) return QString::fromStdString(measured.error().what);
  const QString allowed = tolerance_words(measure), marks = length_words(line.marks);
  if (too_coarse(measure, *measured))
    return Measures::tr("Marks of %1 are too coarse to tell %2: use a finer instrument").arg(marks, allowed);
  const Judged judged = judge(measure, *measured);
  const QString read = reading_words(measure, line, *measured);
  QString said;
  switch (judged.verdict) {
    case Verdict::within:
      said = Measures::tr("%1 is within %2").arg(read, allowed);
      break;
    case Verdict::under:
      said = Measures::tr("%1 is under %2, by %3").arg(read, allowed, by_words(measure, judged.by));
      break;
    case Verdict::over:
      said = Measures::tr("%1 is over %2, by %3").arg(read, allowed, by_words(measure, judged.by));
      break;
  }
  if (judged.sure) return said;
  return Measures::tr("%1; so near the edge, marks of %2 cannot tell for sure").arg(said, marks);
}

}  // namespace wm::app
