#include "core/rulebook/rulebook.h"

#include <algorithm>

namespace wm {

std::vector<TargetName> targets_of(const Rulebook& rulebook) {
  std::vector<TargetName> targets;
  for (const MachineClass& c : rulebook.classes) {
    if (c.modes.empty()) targets.push_back(c.name);
    for (const std::string& mode : c.modes) targets.push_back(c.name + "/" + mode);
  }
  std::sort(targets.begin(), targets.end());
  return targets;
}

const MachineClass* find_class(const Rulebook& rulebook, std::string_view name) {
  const auto found = std::find_if(rulebook.classes.begin(), rulebook.classes.end(),
                                  [&](const MachineClass& c) { return c.name == name; });
  return found == rulebook.classes.end() ? nullptr : &*found;
}

const Tier* find_tier(const Rulebook& rulebook, int tier) {
  const auto found = std::find_if(rulebook.tiers.begin(), rulebook.tiers.end(),
                                  [&](const Tier& t) { return t.tier == tier; });
  return found == rulebook.tiers.end() ? nullptr : &*found;
}

namespace {

/// The mode that a target of this class names; nothing where it is no target of it.
std::optional<std::string_view> mode_of(const MachineClass& c, std::string_view target) {
  const bool with_mode = target.size() > c.name.size();
  if (with_mode == c.modes.empty()) return std::nullopt;
  if (!with_mode) return "";
  const std::string_view mode = target.substr(c.name.size() + 1);
  return std::find(c.modes.begin(), c.modes.end(), mode) == c.modes.end() ? std::nullopt
                                                                          : std::optional(mode);
}

void add_all(std::vector<const Gate*>& gates, const std::vector<Gate>& more) {
  for (const Gate& gate : more) gates.push_back(&gate);
}

}  // namespace

std::vector<const Gate*> gates_of(const Rulebook& rulebook, std::string_view target) {
  std::vector<const Gate*> gates;
  const MachineClass* c = find_class(rulebook, class_of(target));
  const auto mode = c ? mode_of(*c, target) : std::nullopt;
  if (!mode) return gates;
  if (const Tier* tier = find_tier(rulebook, c->tier)) add_all(gates, tier->gates);
  add_all(gates, c->gates);
  if (const auto own = c->mode_gates.find(std::string(*mode));
      !c->modes.empty() && own != c->mode_gates.end())
    add_all(gates, own->second);
  std::sort(gates.begin(), gates.end(), [](const Gate* a, const Gate* b) { return a->id < b->id; });
  return gates;
}

}  // namespace wm
