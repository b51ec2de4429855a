#include "app/quiz/time_gone.h"

#include <QSysInfo>
#include <algorithm>
#include <ctime>

namespace wm::app {

ReadClock this_computers_clock(std::function<Instant()> wall) {
  return [wall = std::move(wall), boot = QString::fromLatin1(QSysInfo::bootUniqueId())] {
    timespec since{};
    const bool known = clock_gettime(CLOCK_BOOTTIME, &since) == 0;
    return ClockReading{wall(), known ? boot : QString(), known ? std::int64_t{since.tv_sec} : 0};
  };
}

std::optional<std::int64_t> seconds_between(const ClockReading& then, const ClockReading& now) {
  if (!then.boot.isEmpty() && then.boot == now.boot)
    return std::max<std::int64_t>(0, now.since_boot - then.since_boot);
  if (now.wall < then.wall) return std::nullopt;
  return std::max(now.wall.seconds - then.wall.seconds, now.since_boot);
}

}  // namespace wm::app
