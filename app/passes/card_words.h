#pragma once
// A limits card and a plan under it, as people read them.
#include <QString>
#include <utility>
#include <vector>

#include "app/passes/cards.h"
#include "core/passes/joint.h"
#include "core/passes/plane.h"

namespace wm::app {

/// Each line of a card: what it says, and its value.
std::vector<std::pair<QString, QString>> card_lines(const AnyCard& card);
/// "The maker's manual comes first; this card is the shop's note of it."
QString card_caution();

/// In divisions of the wheel, and in turns: "16 of 20 (0.8 turn)", "1 turn and 4 of 20 (1.2 turns)"
QString wheel_words(const WheelMove& move, const Wheel& wheel);

/// One pass as a line of the plan.
struct PassLine {
  QString how;      // "Set by the scale", "Turn on to find the high spot" …
  QString setting;  // what is left, or how deep the scale says it cuts; empty: by what is measured
  QString wheel;    // how far it is turned on, or that this goes by what is measured
  QString most;     // the deepest cut that can happen
  QString measure;  // before or after; may be empty
};
/// What is set by the scale stands on a mark, and is said exactly; what a measure ties, no finer than the
/// caliper reads. Empty where it goes by what is still to be measured.
QString setting_words(const Pass& pass, const Inches& caliper);
std::vector<PassLine> pass_lines(const std::vector<Pass>& passes, const Wheel& wheel, const Inches& caliper);
std::vector<PassLine> pass_lines(const JointPlan& plan);

/// How many passes, and beside it the least that arithmetic allows.
QStringList plan_sentences(const PassPlan& plan, const Stock& stock, const Wheel& wheel);
QStringList plan_sentences(const PassesLeft& left, const Stock& stock, const Inches& measured,
                           const Wheel& wheel);
QStringList plan_sentences(const JointPlan& plan, const BoardToJoint& board);
/// What is always so at such a machine: the usual cautions.
QStringList plan_cautions(bool planer);

}  // namespace wm::app
