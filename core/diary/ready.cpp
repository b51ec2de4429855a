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

template <class Holds>
void add_missing(const Reason& reason, Holds holds, std::vector<Reason>& out) {
  if (holds(reason)) return;
  if (std::holds_alternative<NeedAllOf>(reason.need.need)) {
    for (const Reason& part : reason.of) add_missing(part, holds, out);
    return;
  }
  if (std::find_if(out.begin(), out.end(), [&](const Reason& other) { return other.need == reason.need; }) !=
      out.end())
    return;
  out.push_back(reason);
  std::erase_if(out.back().of, holds);
}

}  // namespace

bool ready_for_checkout(const StandingAnswer& answer) {
  return answer.standing >= Rung::supervised &&
         std::none_of(answer.gates.begin(), answer.gates.end(), [](const GateAnswer& gate) {
           return gate.state == GateState::unmet && !holds_but_for_checkout(gate.reason);
         });
}

std::vector<Reason> missing_for(const StandingAnswer& answer, bool for_checkout) {
  std::vector<Reason> out;
  for (const GateAnswer& gate : answer.gates) {
    if (gate.state != GateState::unmet) continue;
    if (gate.guards <= Rung::supervised)
      add_missing(
          gate.reason, [](const Reason& reason) { return reason.holds; }, out);
    else if (for_checkout)
      add_missing(gate.reason, holds_but_for_checkout, out);
  }
  return out;
}

}  // namespace wm
