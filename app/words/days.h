#pragma once
// Days and times of the shop's clock as people read them, in the system's language and with its hours.
#include <QString>

#include "core/time/zone.h"

namespace wm::app {

/// The last civil day that is over when `until` comes: the greatest D with zone.start(D + 1) <= until. Days
/// that clocks skip are over when they would have begun.
Day last_whole_day(Instant until, const Zone& zone);
/// That day, "28 August 2026", the year left out where it is `today`'s; "today, 17:30" where `until` still
/// comes today.
QString last_day(Instant until, const Zone& zone, Instant today);
/// "3 December", the date at t, the year left out where it is `today`'s.
QString day_words(Instant t, const Zone& zone, Instant today);
/// From when: "today", "3 December", or with the time where t is not the beginning of its day.
QString moment_words(Instant t, const Zone& zone, Instant today);
/// "Wednesday 25 November 2026"
QString long_day(Instant t, const Zone& zone);
/// As last_day, in a narrow cell: "25 Nov 2026", "today".
QString short_last_day(Instant until, const Zone& zone, Instant today);
/// "25 Nov 2026"
QString short_day(Instant t, const Zone& zone);
/// "17:30" or "5:30 PM", as the locale has it.
QString clock_time(Instant t, const Zone& zone);
/// The same; with its day before it where that is not `today`'s: "3 December, 17:30".
QString time_words(Instant t, const Zone& zone, Instant today);
/// A minute of the day, 0 to 1440, which is "midnight".
QString minute_words(int minute);

}  // namespace wm::app
