#include "core/sheet/result.h"

namespace wm {
namespace {

template <class T>
T at_line(std::span<const T> by_line, std::size_t line) {
  return line < by_line.size() ? by_line[line] : T{};
}

/// What came of one line.
struct Seen {
  Mark first, second;
  bool to_measure = false, out_of_tolerance = false;
};

/// Without a mark a measure says by itself whether the line was shown.
void take_measure(Seen& seen, const Measure& measure, const MaybeMeasured& measured) {
  seen.to_measure = !measured || too_coarse(measure, *measured);
  if (seen.to_measure) return;
  seen.out_of_tolerance = judge(measure, *measured).verdict != Verdict::within;
  if (seen.first == Mark::none) seen.first = Mark::shown;
}

/// Sorts one line into the lists of the result.
void sort_in(SheetResult& result, std::size_t line, bool critical, const Seen& seen) {
  const bool asked = seen.first == Mark::shown_when_asked;
  const bool missed =
      seen.out_of_tolerance || seen.first == Mark::not_shown || (asked && seen.second == Mark::not_shown);
  if (missed) {
    (critical ? result.critical_missed : result.missed).push_back(line);
    return;
  }
  if (seen.to_measure) result.to_measure.push_back(line);
  if (seen.first == Mark::none && !seen.to_measure) result.unmarked.push_back(line);
  if (critical && asked && seen.second != Mark::shown) result.show_again.push_back(line);
}

Suggested suggest(const SheetResult& result) {
  if (!result.critical_missed.empty()) return Suggested::failed;
  if (!result.unmarked.empty() || !result.show_again.empty() || !result.to_measure.empty())
    return Suggested::not_finished;
  return Suggested::passed;
}

template <class SeenAt>
SheetResult sorted(const Sheet& sheet, const SeenAt& seen_at) {
  SheetResult result;
  std::size_t line = 0;
  for (const SheetLine* each : lines_of(sheet)) {
    sort_in(result, line, each->critical, seen_at(line, *each));
    ++line;
  }
  // A sheet of no lines has shown nothing.
  result.suggested = line == 0 ? Suggested::not_finished : suggest(result);
  return result;
}

}  // namespace

SheetResult result_of(const Sheet& sheet, std::span<const Mark> marks, std::span<const Mark> again,
                      std::span<const MaybeMeasured> measured) {
  return sorted(sheet, [&](std::size_t at, const SheetLine& line) {
    Seen seen{at_line(marks, at), at_line(again, at)};
    if (line.measure) take_measure(seen, *line.measure, at_line(measured, at));
    return seen;
  });
}

SheetResult result_of(const Sheet& sheet, std::span<const Mark> marks, std::span<const Mark> again) {
  return sorted(sheet, [&](std::size_t at, const SheetLine&) {
    return Seen{at_line(marks, at), at_line(again, at)};
  });
}

std::vector<Mark> first_seen(const Sheet& sheet, std::span<const Mark> marks,
                             std::span<const MaybeMeasured> measured) {
  std::vector<Mark> out;
  for (const SheetLine* line : lines_of(sheet)) {
    const std::size_t at = out.size();
    Seen seen{at_line(marks, at), Mark::none};
    const bool by_measure = line->measure && seen.first == Mark::none;
    if (by_measure) take_measure(seen, *line->measure, at_line(measured, at));
    out.push_back(by_measure && seen.out_of_tolerance ? Mark::not_shown : seen.first);
  }
  return out;
}

bool may_sign(const SheetResult& result, Outcome outcome) {
  switch (outcome) {
    case Outcome::passed:
      return result.suggested == Suggested::passed;
    case Outcome::failed:
      return true;
    case Outcome::stopped:
      return result.suggested != Suggested::failed;
  }
  return false;
}

}  // namespace wm
