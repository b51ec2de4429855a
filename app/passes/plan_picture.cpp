// What of a plan is drawn; how stands in plan_drawing.cpp.
#include "app/passes/plan_picture.h"

#include <algorithm>

#include "app/passes/card_words.h"
#include "app/words/length_words.h"

namespace wm::app {
namespace {

double height_of(const Inches& length) { return length.count.get_d(); }

}  // namespace

PlanPicture picture_of(const PassPlan& plan, const Stock& stock) {
  PlanPicture out{height_of(stock.thickest),
                  height_of(stock.final),
                  0,
                  length_words(stock.thickest),
                  length_words(stock.final),
                  {},
                  false};
  double above = out.rough;
  for (const Pass& pass : plan.passes) {
    const bool takes = pass.kind == PassKind::take || pass.kind == PassKind::last;
    const double setting = height_of(pass.setting);
    // The first that surely cuts takes what it is turned on by; each further one, from the one before.
    const double top = out.cuts.empty() || !out.cuts.back().takes ? setting + height_of(pass.most) : above;
    out.cuts.push_back(
        {takes ? std::min(top, out.rough) : setting, setting, takes, setting_words(pass, stock.marks)});
    above = setting;
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
