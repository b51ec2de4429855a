#pragma once
// What differs: over time, were a record struck out, were another rulebook in force.
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

/// Whose standing at `at`, as known at `known`, would differ were that record struck out; on the targets of
/// the rulebook in force at `at`, in order of (person, target).
std::vector<StandingChange> rests_on(const Shop& shop, std::optional<Instant> known, std::string_view record,
                                     Instant at);

/// Whose standing at `at` would differ were `rulebook` in force from `at` on in place of any other, earlier
/// instants keeping theirs; on the targets of it and of the one in force, in order of (person, target).
std::vector<StandingChange> what_if(const Shop& shop, std::optional<Instant> known, const Rulebook& rulebook,
                                    Instant at);

}  // namespace wm
