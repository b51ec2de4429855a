#pragma once
// The limits card of a machine that takes stock down by passes: what its maker allows, and how well it can be
// set.
#include <optional>
#include <vector>

#include "core/measure/length.h"
#include "core/problem.h"

namespace wm {

/// Stock up to so wide is cut so deep at most in one pass.
struct DepthForWidth {
  Inches width, deepest;
  friend bool operator==(const DepthForWidth&, const DepthForWidth&) = default;
};

/// What a planer's and a jointer's card have in common. All above zero, but for the scale's error, which may
/// be zero.
struct LimitsCard {
  std::vector<DepthForWidth>
      depths;  // wider and wider, never deeper; the last width is that of the widest stock
  std::optional<Inches> shortest;  // as the maker says; without it no plan is made
  Inches thinnest;                 // what may be left
  Inches light;                    // what a light pass takes at most
  Inches scale_marks;              // from one mark of its scale to the next: it is set on a mark
  Inches scale_error;              // what the scale says is within this, either way
  friend bool operator==(const LimitsCard&, const LimitsCard&) = default;
};

/// The wheel that moves a planer's bed or its cutterhead.
struct Wheel {
  Inches turn;        // how far one turn moves it, above zero
  int divisions = 1;  // how many marks are around it: a setting on a mark is taken as exact
  friend bool operator==(const Wheel&, const Wheel&) = default;
};
Inches division(const Wheel& wheel);

/// A thickness planer, and the planer's mode of a combination.
struct PlanerCard {
  LimitsCard limits;
  Wheel wheel;
  friend bool operator==(const PlanerCard&, const PlanerCard&) = default;
};

/// A jointer, and the jointer's mode of a combination: its scale says how deep it cuts, and no wheel ties it.
struct JointerCard {
  LimitsCard limits;
  std::optional<Inches> narrowest = {};  // how wide an edge may leave a board; without it, as `thinnest`
  friend bool operator==(const JointerCard&, const JointerCard&) = default;
};

Inches narrowest_left(const JointerCard& card);

/// What a card must also be: `where` names the field. None where it is a card to plan by.
std::vector<Problem> mistakes_in(const std::vector<DepthForWidth>& depths);
std::vector<Problem> mistakes_in(const LimitsCard& limits);
std::vector<Problem> mistakes_in(const PlanerCard& card);
std::vector<Problem> mistakes_in(const JointerCard& card);

/// The deepest pass for a cut so wide; none where that is wider than the machine takes.
std::optional<Inches> deepest_for(const LimitsCard& limits, const Inches& width);

}  // namespace wm
