#pragma once
// Who waits, and every way in which each could be served: what the matching chooses among. Where the ways
// come from (hours, bookings, the rules) is not known here.
#include <cstdint>
#include <optional>
#include <vector>

#include "core/diary/slots.h"

namespace wm {

/// A place in FitQuestion::openings.
using OpeningIndex = std::uint32_t;

/// An assessor and a unit at a time. Clear of everything that is booked.
struct Opening {
  Interval when;
  PersonId assessor;
  MachineId unit;
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

/// At most `minutes` from the beginning of a stretch of one-on-ones to its end; a break of `rest` minutes or
/// more ends a stretch.
struct Stretch {
  int minutes = 0, rest = 0;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// What an assessor takes on, beside their hours. What is booked already counts too, and stays.
struct AssessorLimits {
  PersonId assessor;
  std::optional<int> longest_day;  // minutes of one-on-ones given a day
  std::optional<Stretch> stretch;
  friend bool operator==(const AssessorLimits&, const AssessorLimits&) = default;
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
