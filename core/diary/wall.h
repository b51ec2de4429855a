#pragma once
// Where a day's wall clock shows what: for core/diary's own files.
#include "core/time/zone.h"

namespace wm {

/// 0 is Monday.
int weekday(Day day);
/// The instant at which the clock shows so many minutes of the day: the jump, where it leaves them out; the
/// first of two.
Instant on_wall(const Zone& zone, Day day, int minute);

}  // namespace wm
