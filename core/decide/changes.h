#pragma once
// What differs: over time, and by something supposed. What would is answered by a shop in memory (current.h).
#include <vector>

#include "core/decide/decider.h"

namespace wm {

/// A fall in somebody's standing.
struct Drop {
  Instant at;
  PersonId person;
  TargetName target;
  Rung before, after;
  friend bool operator==(const Drop&, const Drop&) = default;
};

/// Every fall with `from < at <= to`, on the targets that any known rulebook has; in order of (at, person,
/// target).
std::vector<Drop> drops(Decider& decider, Instant from, Instant to);

/// A standing that would be another.
struct StandingChange {
  PersonId person;
  TargetName target;
  Rung before, after;
  friend bool operator==(const StandingChange&, const StandingChange&) = default;
};

}  // namespace wm
