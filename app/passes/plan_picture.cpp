// What of a plan is drawn; how stands in plan_drawing.cpp.
#include "app/passes/plan_picture.h"

#include <algorithm>

#include "app/passes/card_words.h"
#include "app/words/length_words.h"

namespace wm::app {
namespace {

double height_of(const Inches& length) { return length.count.get_d(); }

PlanPicture board_of(const Stock& stock, const Inches& now) {
  PlanPicture out;
  out.rough = height_of(now);
  out.final = height_of(std::min(now, stock.final));
  out.rough_words = length_words(now);
  if (now > stock.final) out.final_words = length_words(stock.final);
  return out;
}

}  // namespace

PlanPicture picture_of(const PassPlan& plan, const Stock& stock) {
  PlanPicture out = board_of(stock, stock.thickest);
  const auto takes = std::ranges::count(plan.passes, PassKind::take, &Pass::kind);
  // The last takes its share of what is drawn; how much all of them really take is not known yet.
  const double light = std::min(height_of(plan.passes.back().most), out.rough - out.final);
  const double each = takes > 0 ? (out.rough - out.final - light) / static_cast<double>(takes) : 0;
  double above = takes > 0 ? out.rough : out.final + light;
  for (const Pass& pass : plan.passes) {
    const bool after_a_cut = pass.kind == PassKind::take || pass.kind == PassKind::last;
    const double below = !after_a_cut                  ? height_of(*pass.setting)
                         : pass.kind == PassKind::last ? out.final
                                                       : above - each;
    out.cuts.push_back({after_a_cut ? above : below, below, after_a_cut, setting_words(pass, stock.marks)});
    if (after_a_cut) above = below;
  }
  return out;
}

PlanPicture picture_of(const PassesLeft& left, const Stock& stock, const Inches& measured) {
  PlanPicture out = board_of(stock, measured);
  double above = out.rough;
  for (const Pass& pass : left.passes) {
    out.cuts.push_back({above, height_of(*pass.setting), true, setting_words(pass, stock.marks)});
    above = height_of(*pass.setting);
  }
  return out;
}

PlanPicture picture_of(const JointPlan& plan, const BoardToJoint& board) {
  PlanPicture out{height_of(board.joint == Joint::face ? board.thickness : board.width),
                  0,
                  height_of(board.hollow),
                  {},
                  {},
                  {},
                  true};
  double taken = 0;
  for (const JointPass& pass : plan.passes) {
    const double setting = height_of(pass.setting);
    out.cuts.push_back({taken + setting, taken, true, length_words(pass.setting)});
    taken += setting;
  }
  out.final = out.rough - taken;
  out.rough_words = length_words(board.joint == Joint::face ? board.thickness : board.width);
  return out;
}

}  // namespace wm::app
