#include "core/passes/joint.h"

#include <algorithm>

#include "core/measure/show.h"
#include "core/passes/common.h"

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

/// What the scale can be set to, in its marks, so that the deepest pass, or a light one, is not passed were
/// it off all the way.
struct Marks {
  Whole deepest, light;
};

std::optional<Problem> taking_refused(const LimitsCard& limits, const BoardToJoint& board,
                                      const Marks& marks) {
  if (marks.light < 1)
    return Problem{
        "scale_error",
        "The scale may be off by " + to_text(limits.scale_error) + " and its marks are " +
            to_text(limits.scale_marks) + " apart: no setting takes a light pass (" + to_text(limits.light) +
            ") at most.",
        "Set the depth from zero with a straightedge, and write on the card within how much that is."};
  if (board.hollow / limits.scale_marks > marks.deepest * most_passes) return too_many_passes("hollow");
  const Inches past = limits.scale_error + limits.scale_marks;
  const Inches left = board.thickness - (board.joint == Joint::face ? board.hollow + past : zero);
  if (left < limits.thinnest)
    return Problem{"thickness",
                   "It could be " + to_text(left) + " thick, and the thinnest stock of this machine is " +
                       to_text(limits.thinnest) + ".",
                   "Take thicker stock, or cut it shorter first: a shorter board is less hollow."};
  return std::nullopt;
}

/// Passes as even as marks come under the deepest, and a light one.
std::vector<JointPass> passes_for(const LimitsCard& limits, const Inches& hollow, const Marks& marks) {
  const Whole all = steps_around(hollow, limits.scale_marks);
  const Whole last = std::min(all, marks.light);
  std::vector<Whole> settings = evenly(all - last, marks.deepest);
  settings.push_back(last);
  std::vector<JointPass> passes;
  for (const Whole& each : settings) {
    const Inches setting = limits.scale_marks * Fraction(each);
    passes.push_back({setting, setting + limits.scale_error, false});
  }
  passes.back().last = true;
  return passes;
}

}  // namespace

Expected<JointPlan> plan_joint(const JointerCard& card, const BoardToJoint& board) {
  if (auto refused = lying_refused(board)) return tl::unexpected(*std::move(refused));
  const Inches& cut = board.joint == Joint::face ? board.width : board.thickness;
  const LimitsCard& limits = card.limits;
  const auto deepest = deepest_pass(limits, mistakes_in(card), board.length, cut);
  if (!deepest) return tl::unexpected(deepest.error());
  const Inches light = std::min(limits.light, *deepest);
  const Marks marks{steps_within(*deepest - limits.scale_error, limits.scale_marks),
                    steps_within(light - limits.scale_error, limits.scale_marks)};
  if (auto refused = taking_refused(limits, board, marks)) return tl::unexpected(*std::move(refused));
  return JointPlan{passes_for(limits, board.hollow, marks), ceil_of(board.hollow / *deepest), *deepest};
}

}  // namespace wm
