#pragma once
// Who waits, and every way in which each could be served: what the matching chooses among. Where the ways
// come from (hours, bookings, the rules) is not known here.
#include <cstdint>
#include <optional>
#include <vector>

#include "core/diary/hours.h"

namespace wm {

/// A place in FitQuestion::openings.
using OpeningIndex = std::uint32_t;

/// An assessor, or two where two witness it, and a unit at a time. Clear of everything that is booked.
struct Opening {
  Interval when;
  PersonId assessor;
  MachineId unit;
  PersonId second = {};  // empty: none
  bool assesses(const PersonId& who) const { return assessor == who || (!second.empty() && second == who); }
  friend bool operator==(const Opening&, const Opening&) = default;
};

/// Somebody who waits for one one-on-one on one target. Whoever waits for two is here twice.
struct Waiter {
  PersonId person;
  TargetName target;
  int days = 0;                    // waited so far; 0 to 36,500
  std::optional<Instant> lapses;   // from when something that this one-on-one needs will no longer hold
  std::vector<OpeningIndex> fits;  // what would serve them, each once, clear of all that they have booked
  friend bool operator==(const Waiter&, const Waiter&) = default;
};

struct FitQuestion {
  Zone zone = Zone::utc();
  std::vector<Opening> openings;
  std::vector<Waiter> waiters;
  std::vector<Booked> booked;
  std::vector<AssessorLimits> limits;  // one each at most
  int longest_wait = 36500;            // days; whoever has waited longer comes first
  Instant next_week = first_instant;   // so does anybody with a lapse up to then
};

bool comes_first(const FitQuestion& question, const Waiter& waiter);

}  // namespace wm
