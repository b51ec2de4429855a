#include "core/sheet/result.h"

namespace wm {
namespace {

Mark mark_at(std::span<const Mark> marks, std::size_t line) {
  return line < marks.size() ? marks[line] : Mark::none;
}

/// Sorts one line into the lists of the result.
void judge(SheetResult& result, std::size_t line, bool critical, Mark first, Mark second) {
  if (first == Mark::none) {
    result.unmarked.push_back(line);
    return;
  }
  const bool asked = first == Mark::shown_when_asked;
  const bool missed = first == Mark::not_shown || (asked && second == Mark::not_shown);
  if (missed) {
    (critical ? result.critical_missed : result.missed).push_back(line);
  } else if (critical && asked && second != Mark::shown) {
    result.show_again.push_back(line);
  }
}

Suggested suggest(const SheetResult& result) {
  if (!result.critical_missed.empty()) return Suggested::failed;
  if (!result.unmarked.empty() || !result.show_again.empty()) return Suggested::not_finished;
  return Suggested::passed;
}

}  // namespace

SheetResult result_of(const Sheet& sheet, std::span<const Mark> marks, std::span<const Mark> again) {
  SheetResult result;
  std::size_t line = 0;
  for (const SheetLine* each : lines_of(sheet)) {
    judge(result, line, each->critical, mark_at(marks, line), mark_at(again, line));
    ++line;
  }
  // A sheet of no lines has shown nothing.
  result.suggested = line == 0 ? Suggested::not_finished : suggest(result);
  return result;
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
