#pragma once
// A plan from sizes as they were typed: what the page shows and the paper prints.
#include <QString>
#include <QStringList>

#include "app/passes/card_words.h"
#include "app/passes/plan_picture.h"

namespace wm::app {

/// As typed; for a planer all but `hollow`, for a jointer all but `uneven`, `final`, `marks` and `measured`.
struct PlanSizes {
  QString length, width, thickest, uneven, final, marks, hollow;
  Joint joint = Joint::face;
  bool crown_up = false, fence_at_90 = false;
  QString measured = {};  // where it was cut; empty: nothing was cut yet
};

struct ShownPlan {
  QString title;
  QStringList sentences, cautions;
  std::vector<PassLine> lines;
  PlanPicture picture;
};

/// What a length without a unit is in: inches, or millimetres where people measure in those.
LengthUnit plain_unit();
/// Whether all that such a card asks for has been typed; nothing needs to be measured yet.
bool all_typed(const AnyCard& card, const PlanSizes& sizes);
/// Once something was measured where it was cut: what is left to do. Refused with the field's name where a
/// size cannot be read, and with what would help where there is no such plan.
Expected<ShownPlan> shown_plan(const IssuedCard& card, const PlanSizes& sizes);

}  // namespace wm::app
