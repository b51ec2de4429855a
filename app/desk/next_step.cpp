#include "app/desk/next_step.h"

namespace wm::app {

namespace {

struct OfStep {
  Next operator()(const Document& s) const { return {NextStep::paper, s.document}; }
  Next operator()(const Lesson& s) const { return {NextStep::lesson, s.lesson}; }
  Next operator()(const Quiz& s) const { return {NextStep::quiz, s.quiz}; }
  Next operator()(const Checkout& s) const { return {NextStep::one_on_one, s.checkout}; }
  Next operator()(const Supervised&) const { return {NextStep::one_on_one, {}}; }
  // A use needs no button, and no route has any other.
  template <class T>
  Next operator()(const T&) const {
    return {};
  }
};

struct OfNeed {
  Next operator()(const NeedDocument& n) const { return {NextStep::paper, n.document}; }
  Next operator()(const NeedLesson& n) const { return {NextStep::lesson, n.lesson}; }
  Next operator()(const NeedQuiz& n) const { return {NextStep::quiz, n.quiz}; }
  Next operator()(const NeedCheckout& n) const { return {NextStep::one_on_one, n.checkout}; }
  // The others have no grace, or several ways out of it.
  template <class T>
  Next operator()(const T&) const {
    return {};
  }
};

}  // namespace

Next next_on(const Route& route) {
  return route.steps.empty() ? Next{} : std::visit(OfStep{}, route.steps.front().fact);
}

Next next_renewal(const StandingAnswer& answer) {
  for (const GateAnswer& gate : answer.gates) {
    if (gate.state != GateState::in_grace || gate.spared || gate.guards > answer.standing) continue;
    const Next next = std::visit(OfNeed{}, gate.reason.need.need);
    if (next.step != NextStep::nothing) return next;
  }
  return {};
}

}  // namespace wm::app
