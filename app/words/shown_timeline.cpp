#include "app/words/shown_timeline.h"

#include <algorithm>

#include "core/time/period.h"

namespace wm::app {

namespace {

Instant next_month(Instant t, const Zone& zone) {
  CivilDate date = civil(zone.day(t));
  if (++date.month > 12) date = {date.year + 1, 1, 1};
  return zone.start(day_of({date.year, date.month, 1}));
}

/// A step is one only where it differs from the one before.
void add(std::vector<TimelineStep>& shown, Instant at, Rung rung) {
  if (!shown.empty() && shown.back().standing == rung) return;
  shown.push_back({at, rung});
}

}  // namespace

Instant before_month_of(Instant from, const Zone& zone) {
  const CivilDate date = civil(zone.day(from));
  return zone.start(day_of({date.year, date.month, 1})) - 1;
}

std::vector<TimelineStep> shown_timeline(const std::vector<TimelineStep>& steps, Instant from,
                                         const AnswerReader& reader) {
  std::vector<TimelineStep> shown;
  Rung most = Rung::independent;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const TimelineStep& step = steps[i];
    const bool tells = i > 0 && step.standing > steps[i - 1].standing && reader.hides(step.at);
    if (tells && step.at > reader.now) most = std::min(most, steps[i - 1].standing);
    const Instant at =
        tells ? std::min(next_month(step.at, reader.zone), std::max(step.at, reader.now)) : step.at;
    // What was over before it may be shown is not shown.
    if (tells && i + 1 < steps.size() && steps[i + 1].at <= at) continue;
    if (at <= from) shown.clear();
    add(shown, std::max(at, from), std::min(step.standing, most));
  }
  return shown;
}

Rung rung_in(const std::vector<TimelineStep>& steps, Instant t) {
  Rung rung = steps.empty() ? Rung::barred : steps.front().standing;
  for (const TimelineStep& step : steps)
    if (step.at <= t) rung = step.standing;
  return rung;
}

}  // namespace wm::app
