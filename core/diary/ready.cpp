#include "core/diary/ready.h"

#include <algorithm>

namespace wm {
namespace {

bool holds_but_for_checkout(const Reason& reason) {
  if (reason.holds) return true;
  const auto parts = [&] {
    return std::count_if(reason.of.begin(), reason.of.end(), holds_but_for_checkout);
  };
  const auto all = static_cast<std::ptrdiff_t>(reason.of.size());
  if (std::holds_alternative<NeedCheckout>(reason.need.need)) return parts() == all;
  if (std::holds_alternative<NeedAllOf>(reason.need.need)) return parts() == all;
  if (std::holds_alternative<NeedAnyOf>(reason.need.need)) return parts() >= 1;
  if (const auto* some = std::get_if<NeedSomeOf>(&reason.need.need)) return parts() >= some->count;
  return false;
}

}  // namespace

std::vector<std::string> unmet_but_for_checkout(const StandingAnswer& answer) {
  std::vector<std::string> out;
  for (const GateAnswer& gate : answer.gates)
    if (gate.state == GateState::unmet && !holds_but_for_checkout(gate.reason)) out.push_back(gate.id);
  return out;
}

bool ready_for_checkout(const StandingAnswer& answer) {
  return answer.standing >= Rung::supervised && unmet_but_for_checkout(answer).empty();
}

}  // namespace wm
