#pragma once
// A timeline as it may be shown: without the days that would tell a birthday.
#include <vector>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// The second before the month that `from` is in: from there on a timeline is asked for that is to be shown
/// from `from` on, since a birthday in that month shows later than it is.
Instant before_month_of(Instant from, const Zone& zone);

/// A timeline from `from` on; `steps` begin at before_month_of(from) or earlier. A rise on a birthday is left
/// out where it is still to come, and shown from the first of the next month on (or from reader.now, where
/// that is sooner) where it is past. So what is shown is never above what is so.
std::vector<TimelineStep> shown_timeline(const std::vector<TimelineStep>& steps, Instant from,
                                         const AnswerReader& reader);

/// The standing that a timeline has at t; its first one before it begins.
Rung rung_in(const std::vector<TimelineStep>& steps, Instant t);

}  // namespace wm::app
