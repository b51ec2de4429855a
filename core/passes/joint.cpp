#include "core/passes/joint.h"

#include <algorithm>

#include "core/measure/show.h"
#include "core/passes/refuse.h"

namespace wm {
namespace {

const Inches zero;

std::optional<Problem> lying_refused(const BoardToJoint& board) {
  if (std::min({board.length, board.width, board.thickness, board.hollow}) <= zero)
    return Problem{"board", "A size of the board is zero or missing.",
                   "Measure length, width and thickness, and the gap under a straightedge."};
  if (!board.crown_up)
    return Problem{"crown_up", "The crown is not up: the board would rock, and no pass would leave it flat.",
                   "Turn it over, so that it rests on its two ends."};
  if (board.joint == Joint::edge && !board.fence_at_90)
    return Problem{"fence_at_90", "The fence is not known to stand at 90 degrees.",
                   "Isolate the machine, set the fence with a square, and try it again when it is tight."};
  return std::nullopt;
}

/// What `deepest` and the scale's error refuse.
std::optional<Problem> taking_refused(const LimitsCard& limits, const BoardToJoint& board,
                                      const Inches& deepest, const Inches& light) {
  if (light <= limits.scale_error)
    return Problem{
        "scale_error",
        "The scale may be off by " + to_text(limits.scale_error) + ", as much as a light pass takes (" +
            to_text(light) + ") or more.",
        "Set the depth from zero with a straightedge, and write on the card within how much that is."};
  if (board.hollow / (deepest - limits.scale_error) > most_passes) return too_many_passes("hollow");
  const Inches left =
      board.thickness - (board.joint == Joint::face ? board.hollow + limits.scale_error : zero);
  if (left < limits.thinnest)
    return Problem{"thickness",
                   "It could be " + to_text(left) + " thick, and the thinnest stock of this machine is " +
                       to_text(limits.thinnest) + ".",
                   "Take thicker stock, or cut it shorter first: a shorter board is less hollow."};
  return std::nullopt;
}

/// Passes as even as they come under the deepest, and a light one.
std::vector<JointPass> passes_for(const LimitsCard& limits, const Inches& hollow, const Inches& deepest,
                                  const Inches& light) {
  const Inches error = limits.scale_error;
  const Inches last = std::min(hollow, light - error);
  const Inches before = hollow - last;
  const Whole count = ceil_of(before / (deepest - error));
  std::vector<JointPass> passes;
  for (Whole i = 0; i < count; ++i) {
    const Inches setting = before * fraction(1, count.get_si());
    passes.push_back({setting, setting + error, false});
  }
  passes.push_back({last, last + error, true});
  return passes;
}

}  // namespace

Expected<JointPlan> plan_joint(const JointerCard& card, const BoardToJoint& board) {
  if (auto refused = lying_refused(board)) return tl::unexpected(*std::move(refused));
  const Inches& cut = board.joint == Joint::face ? board.width : board.thickness;
  const auto deepest = deepest_pass(card.limits, mistakes_in(card), board.length, cut);
  if (!deepest) return tl::unexpected(deepest.error());
  const Inches light = std::min(card.limits.light, *deepest);
  if (auto refused = taking_refused(card.limits, board, *deepest, light))
    return tl::unexpected(*std::move(refused));
  return JointPlan{passes_for(card.limits, board.hollow, *deepest, light), ceil_of(board.hollow / *deepest),
                   *deepest};
}

}  // namespace wm
