#pragma once
// Rungs that depend on one another in a circle.
#include <optional>
#include <string>
#include <vector>

#include "core/rulebook/rulebook.h"

namespace wm {

/// `rungs` reads "independent on A", "independent on B", "independent on A"; `gate` is the JSON pointer,
/// inside the rulebook's object, of a gate through which it runs.
struct Circle {
  std::string gate;
  std::vector<std::string> rungs;
  friend bool operator==(const Circle&, const Circle&) = default;
};

/// A circle among the rungs of the rulebook's targets, if there is any: rung r of X depends on what the gates
/// that guard r and the rungs below name in `standing` and `tier_standing`, `given` lists included. Names
/// that are not defined are passed over. Time and room grow with the length of the rulebook, whatever it
/// holds.
std::optional<Circle> find_circle(const Rulebook& rulebook);

}  // namespace wm
