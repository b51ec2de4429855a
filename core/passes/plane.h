#pragma once
// From rough to final thickness on a planer, pass by pass. What it means stands in core/passes/README.md.
#include <optional>
#include <vector>

#include "core/passes/card.h"

namespace wm {

/// A board whose one face is flat and lies on the bed. All above zero, but for `uneven`, which may be zero.
struct Stock {
  Inches length, width;
  Inches thickest;  // as measured where it is thickest
  Inches uneven;    // how much thicker it may be where nobody measured
  Inches final;
  Inches marks;  // of the caliper: what it reads is within half of one
  friend bool operator==(const Stock&, const Stock&) = default;
};

/// How far the wheel is turned on, to cut more.
struct WheelMove {
  long turns = 0;
  Fraction divisions;  // less than a turn; whole, but for the last pass
  friend bool operator==(const WheelMove&, const WheelMove&) = default;
};
WheelMove wheel_move(const Wheel& wheel, const Inches& by);

/// `by_scale`: the first, set by the scale. `feel`: set by the wheel, and only while nothing has been cut
/// yet. `take`: set by the wheel, once a measure ties it. `last`: light, and by a measure of its own.
enum class PassKind { by_scale, feel, take, last };

struct Pass {
  PassKind kind = PassKind::by_scale;
  /// What the scale, or what is measured and turned since, says that is left.
  std::optional<Inches> setting;
  Inches most;  // the deepest cut that can happen
  /// From the pass before. None in the first, and wherever it goes by what is still to be measured: nobody
  /// can set a pass by a measure that was not taken.
  std::optional<WheelMove> wheel;
  bool measured_before = false, measured_after = false;
  friend bool operator==(const Pass&, const Pass&) = default;
};

struct PassPlan {
  /// As many as it can take; those to feel with end as soon as one has cut. What comes after that cut is
  /// here to be counted, and has no wheel: passes_left has it.
  std::vector<Pass> passes;
  std::size_t fewest = 0;  // where the first pass cuts as much as it can
  Whole floor;             // what is to come off over the deepest pass: no plan has fewer
  Inches deepest;          // by the card, for this width
  friend bool operator==(const PassPlan&, const PassPlan&) = default;
};

/// Refuses what can't be done, with what would help; `where` is a field of the card or the stock.
Expected<PassPlan> plan_passes(const PlanerCard& card, const Stock& stock);

struct PassesLeft {
  std::vector<Pass> passes;  // none where it is as thin as asked, or thinner
  Whole floor;               // what is still to come off over the deepest pass
  Inches deepest;            // by the card, for this width
  friend bool operator==(const PassesLeft&, const PassesLeft&) = default;
};

/// What is left to do once something has been cut, from what was measured where it was: after the first cut,
/// or after any later one, while the wheel stands as it stood for that cut. The last pass has a wheel only
/// where it is all that is left, since it goes by a measure of its own. Refuses a measure that is not above
/// zero or thicker than the board was, and whatever plan_passes refuses.
Expected<PassesLeft> passes_left(const PlanerCard& card, const Stock& stock, const Inches& measured);

}  // namespace wm
