#pragma once
// Why somebody was left out of a proposal, and what there might be that would serve the most of them.
#include <variant>

#include "core/match/fit.h"

namespace wm {

/// Nobody who waits for this target has any opening: why_none in core/diary says why.
struct NoOpening {
  friend bool operator==(const NoOpening&, const NoOpening&) = default;
};
/// Something that the one-on-one needs lapses before the first of the target's openings, of whoever's, is
/// over.
struct NothingBefore {
  Instant lapses, first_over;
  friend bool operator==(const NothingBefore&, const NothingBefore&) = default;
};
/// Others who wait for the target have openings; at those this one is not ready, or is elsewhere.
struct NoneFits {
  std::size_t openings = 0;  // the target's
  friend bool operator==(const NoneFits&, const NoneFits&) = default;
};
/// All that would fit clashes with what is proposed for others, or is beyond an assessor's limits.
struct AllTaken {
  std::size_t openings = 0;          // that would fit by themselves
  std::vector<std::size_t> before;   // waiters in the way who come first or have waited at least as long
  std::vector<std::size_t> instead;  // waiters in the way who have waited less: so more are served altogether
  std::size_t beyond_limits = 0;     // openings in the way of which nobody is but an assessor's limits
  friend bool operator==(const AllTaken&, const AllTaken&) = default;
};
using WhyLeftOut = std::variant<NoOpening, NothingBefore, NoneFits, AllTaken>;

struct LeftOut {
  std::size_t waiter = 0;
  WhyLeftOut why;
  friend bool operator==(const LeftOut&, const LeftOut&) = default;
};
/// Everybody whom the proposal leaves out, in the question's order.
std::vector<LeftOut> left_out(const FitQuestion& question, const std::vector<Placed>& placed);

/// Openings there might be besides: an assessor's hours, a unit. What they are is the caller's to know.
struct Extra {
  std::vector<Opening> openings;
  std::vector<std::vector<OpeningIndex>> fits;  // as the question's waiters; places in `openings`
};
/// How many of those left out each would serve with everything proposed kept as it is.
std::vector<std::size_t> would_serve(const FitQuestion& question, const std::vector<Placed>& placed,
                                     const std::vector<Extra>& extras);

}  // namespace wm
