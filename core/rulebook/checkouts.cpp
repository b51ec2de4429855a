#include "core/rulebook/checkouts.h"

#include <algorithm>
#include <set>

namespace wm {
namespace {

void add_checkouts(const std::vector<Requirement>& list, std::vector<const NeedCheckout*>& found);

void add_checkouts(const Requirement& requirement, std::vector<const NeedCheckout*>& found) {
  if (const auto* checkout = std::get_if<NeedCheckout>(&requirement.need)) {
    found.push_back(checkout);
    add_checkouts(checkout->given, found);
  }
  std::visit(
      [&](const auto& need) {
        if constexpr (requires { need.of; }) add_checkouts(need.of, found);
      },
      requirement.need);
}

void add_checkouts(const std::vector<Requirement>& list, std::vector<const NeedCheckout*>& found) {
  for (const Requirement& one : list) add_checkouts(one, found);
}

}  // namespace

std::vector<const NeedCheckout*> checkout_needs(const Rulebook& rulebook, std::string_view target) {
  std::vector<const NeedCheckout*> found;
  for (const TargetName& each : targets_of(rulebook))
    if (each == target || class_of(each) == target)
      for (const Gate* gate : gates_of(rulebook, each)) add_checkouts(gate->need, found);
  return found;
}

int renewed_after_severity(const Rulebook& rulebook, std::string_view target) {
  int most = 0;
  for (const NeedCheckout* need : checkout_needs(rulebook, class_of(target)))
    most = std::max(most, need->renew_after_severity.value_or(0));
  return most;
}

std::vector<std::string> renewed_after_change(const Rulebook& rulebook, std::string_view target) {
  std::set<std::string> names;
  for (const NeedCheckout* need : checkout_needs(rulebook, target))
    if (need->renew_after_change) names.insert(need->checkout);
  return {names.begin(), names.end()};
}

}  // namespace wm
