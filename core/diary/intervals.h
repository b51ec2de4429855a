#pragma once
// Stretches of time: lists of intervals in order, of which none touches the next.
#include <compare>
#include <vector>

#include "core/time/instant.h"

namespace wm {

/// From `from` up to, and without, `to`: one may end at the second at which the next begins.
struct Interval {
  Instant from, to;
  friend bool operator==(const Interval&, const Interval&) = default;
};
inline bool overlap(const Interval& a, const Interval& b) { return a.from < b.to && b.from < a.to; }

/// Of any intervals: in order, those that overlap or touch made one, empty ones left out.
std::vector<Interval> joined(std::vector<Interval> any);
/// What is in both. Of two such lists, as the next.
std::vector<Interval> common(const std::vector<Interval>& a, const std::vector<Interval>& b);
/// What is in the first and not in the second.
std::vector<Interval> without(const std::vector<Interval>& a, const std::vector<Interval>& b);

}  // namespace wm
