#include "app/desk/next_step.h"

namespace wm::app {

namespace {

struct StepOf {
  Missing operator()(const NeedDocument& n) const { return {NextStep::paper, n.document}; }
  Missing operator()(const NeedLesson& n) const { return {NextStep::lesson, n.lesson}; }
  Missing operator()(const NeedQuiz& n) const { return {NextStep::quiz, n.quiz}; }
  Missing operator()(const NeedCheckout& n) const { return {NextStep::one_on_one, n.checkout}; }
  Missing operator()(const NeedPractice&) const { return {NextStep::one_on_one, {}}; }
  Missing operator()(const NeedRecentUse&) const { return {NextStep::one_on_one, {}}; }
  // Time brings the one, another machine the others: nothing to do here.
  Missing operator()(const NeedAge&) const { return {}; }
  Missing operator()(const NeedStanding&) const { return {}; }
  Missing operator()(const NeedTierStanding&) const { return {}; }
  Missing operator()(const NeedAllOf&) const { return {}; }
  Missing operator()(const NeedAnyOf&) const { return {}; }
  Missing operator()(const NeedSomeOf&) const { return {}; }
};

void look(const Reason& reason, Missing& first) {
  if (reason.holds) return;
  const Missing here = std::visit(StepOf{}, reason.need.need);
  const bool sooner =
      here.step != NextStep::nothing && (first.step == NextStep::nothing || here.step < first.step);
  if (sooner) first = here;
  for (const Reason& part : reason.of) look(part, first);
}

}  // namespace

Missing first_missing(const StandingAnswer& answer, Rung rung) {
  Missing first;
  for (const GateAnswer& gate : answer.gates)
    if (gate.guards <= rung && gate.state == GateState::unmet) look(gate.reason, first);
  return first;
}

}  // namespace wm::app
