#pragma once
// A proposal: who is served when, how good it is, and how good it could be.
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/match/question.h"

namespace wm {

/// Places in the question's lists.
struct Placed {
  std::size_t waiter = 0;
  OpeningIndex opening = 0;
  friend auto operator<=>(const Placed&, const Placed&) = default;
};

/// What is weighed, in this order: a little more of one counts for more than any amount of those below it.
enum class Aim { first, served, waited, trips, gaps };
inline constexpr Aim all_aims[] = {Aim::first, Aim::served, Aim::waited, Aim::trips, Aim::gaps};

struct Measures {
  std::int64_t first = 0;   // served of those who come first; the more the better
  std::int64_t served = 0;  // served at all; the more the better
  std::int64_t waited = 0;  // days waited by those served, added up; the more the better
  std::int64_t trips = 0;   // days on which an assessor comes only for what is proposed; the fewer the better
  std::int64_t gaps = 0;    // minutes that assessors idle between one-on-ones of a day; the fewer the better
  friend bool operator==(const Measures&, const Measures&) = default;
};
std::int64_t of(const Measures& measures, Aim aim);
/// Whether a is better: at the first aim at which they differ.
bool better(const Measures& a, const Measures& b);

struct Proposal {
  std::vector<Placed> placed;  // in order of time, then assessor
  Measures measures;
  /// None where there is no better proposal. Else the first aim that was not settled when time was up, and
  /// what no proposal as good in the aims before it can pass (none: nothing is known).
  struct Open {
    Aim aim = Aim::first;
    std::optional<std::int64_t> bound;
    friend bool operator==(const Open&, const Open&) = default;
  };
  std::optional<Open> open;
};

/// Counted from the placements alone. Trips and gaps are those of people who assess some opening, on days by
/// the shop's zone; what they do there as members counts as being there.
Measures measure(const FitQuestion& question, const std::vector<Placed>& placed);

}  // namespace wm
