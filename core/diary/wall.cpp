#include "core/diary/wall.h"

namespace wm {

/// 1970-01-01 was a Thursday.
int weekday(Day day) { return ((day.number + 3) % 7 + 7) % 7; }

Instant on_wall(const Zone& zone, Day day, int minute) {
  if (minute >= 24 * 60) return zone.start(day + 1);
  return zone.instant({day, minute / 60, minute % 60, 0});
}

}  // namespace wm
