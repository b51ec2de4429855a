#pragma once
// How long an attempt has been going on, across power cuts and clocks that are set.
#include <QString>
#include <functional>
#include <optional>

#include "core/time/instant.h"

namespace wm::app {

/// What this computer's clocks show at one moment.
struct ClockReading {
  Instant wall;                 // the shop's clock, which somebody can set
  QString boot;                 // which start of the computer it was; empty: the system does not say
  std::int64_t since_boot = 0;  // seconds since that start, asleep or awake, which nobody can set
  friend bool operator==(const ClockReading&, const ClockReading&) = default;
};
using ReadClock = std::function<ClockReading()>;

/// `wall` shows the shop's time.
ReadClock this_computers_clock(std::function<Instant()> wall);

/// The seconds between two readings; nothing where they can't be told.
///
/// All of the time counts, that in which the program or the computer was off too: the questions had been
/// read by then, and a plug that was pulled can't be told from a power cut. Where a power cut has cost
/// somebody their attempt, a manager strikes it out, with that as the reason.
///
/// In one run of the computer only the time since its start is looked at: whatever the wall clock is set to
/// gives no time and takes none. Across a start it is what the wall clock says, and at least as long as the
/// computer has been on. A wall clock that shows earlier than it did has been set back by nobody knows how
/// much: the attempt waits until it is right again, and the time counts all the same. (Set back to later than
/// the last answer, while the computer was off, it can't be found out by any program; the members' account
/// has no right to set it.)
std::optional<std::int64_t> seconds_between(const ClockReading& then, const ClockReading& now);

}  // namespace wm::app
