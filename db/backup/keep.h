#pragma once
// Which backups stay.
#include <vector>

#include "core/time/zone.h"

namespace wm::db {

/// For each of these times, latest first, whether that backup stays: the latest of each of the 7 latest days,
/// the 5 latest weeks (from Monday) and the 12 latest months that have any, by the shop's zone. So the latest
/// of all stays.
std::vector<bool> backups_to_keep(const std::vector<Instant>& latest_first, const Zone& zone);

}  // namespace wm::db
