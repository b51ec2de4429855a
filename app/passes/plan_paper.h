#pragma once
// A pass plan on paper: what to do in words, pass by pass, and the drawing beside it, in black and white.
#include "app/passes/shown_plan.h"
#include "app/print/paper.h"

namespace wm::app {

struct PlanPaper {
  PaperText text;
  int pages = 1;
  DrawBody draw;
};

/// `shop` and `card` ("Card of the jointer/planer, planing, revision 1") stand under the title.
PlanPaper plan_paper(const ShownPlan& plan, const QString& shop, const QString& card, PaperSize size);

}  // namespace wm::app
