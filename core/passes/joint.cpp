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

std::string left_words(const Inches& left, const char* across) {
  return left > zero ? "It could be left " + to_text(left) + across + ", and "
                     : "Nothing could be left of it, and ";
}

/// Were the scale off all the way and the last pass a mark too many, so much could come off.
std::optional<Problem> left_refused(const JointerCard& card, const BoardToJoint& board) {
  const LimitsCard& limits = card.limits;
  const bool face = board.joint == Joint::face;
  const Inches off = board.hollow + limits.scale_error + limits.scale_marks;
  const Inches thick = face ? board.thickness - off : board.thickness, wide = board.width - off;
  if (thick < limits.thinnest)
    return Problem{"thickness",
                   left_words(thick, " thick") + "the thinnest stock of this machine is " +
                       to_text(limits.thinnest) + ".",
                   "Take thicker stock, or cut it shorter first: a shorter board is less hollow."};
  if (!face && wide < narrowest_left(card))
    return Problem{"width",
                   left_words(wide, " wide") +
                       "the narrowest board that an edge may leave on this machine is " +
                       to_text(narrowest_left(card)) + ".",
                   "Joint the edge while the board is wide, and rip it to its width afterwards."};
  return std::nullopt;
}

std::optional<Problem> taking_refused(const JointerCard& card, const BoardToJoint& board,
                                      const Marks& marks) {
  const LimitsCard& limits = card.limits;
  if (marks.light < 1)
    return Problem{
        "scale_error",
        "The scale may be off by " + to_text(limits.scale_error) + " and its marks are " +
            to_text(limits.scale_marks) + " apart: no setting takes a light pass (" + to_text(limits.light) +
            ") at most.",
        "Set the depth from zero with a straightedge, and write on the card within how much that is."};
  if (board.hollow / limits.scale_marks > marks.deepest * most_passes) return too_many_passes("hollow");
  return left_refused(card, board);
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
  if (auto refused = taking_refused(card, board, marks)) return tl::unexpected(*std::move(refused));
  return JointPlan{passes_for(limits, board.hollow, marks), ceil_of(board.hollow / *deepest), *deepest};
}

}  // namespace wm
