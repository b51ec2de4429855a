#pragma once
// The shop's rule for whoever is booked and does not come.
#include <optional>
#include <vector>

#include "core/time/period.h"

namespace wm {

/// Whoever has not come so often within so many days is booked again only when so many more have passed.
struct NotComeRule {
  int most = 3;        // 1 to 100
  int in_days = 90;    // 1 to 3650; the days on which they did not come are counted, both ends
  int rest_days = 30;  // 1 to 3650
  friend bool operator==(const NotComeRule&, const NotComeRule&) = default;
};

/// The last day on which somebody is not booked for having not come on these days; nothing where the rule was
/// never reached.
std::optional<Day> rests_through(const NotComeRule& rule, std::vector<Day> not_come);

}  // namespace wm
