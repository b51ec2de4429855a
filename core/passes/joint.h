#pragma once
// A face or an edge made flat on a jointer, pass by pass. What it means stands in core/passes/README.md.
#include <vector>

#include "core/passes/card.h"

namespace wm {

enum class Joint { face, edge };

/// All sizes above zero.
struct BoardToJoint {
  Joint joint = Joint::face;
  Inches length, width, thickness;
  Inches hollow;  // what is to come off until it is flat: the gap under a straightedge where it is widest
  bool crown_up = false;     // looked at: it rests on its two ends and does not rock
  bool fence_at_90 = false;  // tried with a square; asked for an edge
  friend bool operator==(const BoardToJoint&, const BoardToJoint&) = default;
};

struct JointPass {
  Inches setting;  // what the scale of the depth says
  Inches most;     // the deepest cut that can happen
  bool last = false;
  friend bool operator==(const JointPass&, const JointPass&) = default;
};

/// Each pass is looked at; it ends as soon as the board is flat, and is planned anew from what is still
/// hollow.
struct JointPlan {
  std::vector<JointPass> passes;  // where each takes what the scale says
  Whole floor;                    // what is to come off over the deepest pass
  Inches deepest;                 // by the card, for a cut so wide
  friend bool operator==(const JointPlan&, const JointPlan&) = default;
};

/// Refuses what can't be done, with what would help; `where` is a field of the card or the board.
Expected<JointPlan> plan_joint(const JointerCard& card, const BoardToJoint& board);

}  // namespace wm
