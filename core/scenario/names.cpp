#include "core/scenario/names.h"

#include <algorithm>

#include "core/json/writing.h"

namespace wm {

using json::Names;

namespace {

struct Complaint {
  std::string what, remedy;
};

Complaint undefined(Names names, const std::string& name) {
  const std::string quoted = json::in_quotes(name);
  switch (names) {
    case Names::person:
      return {"There is no person " + quoted + ".", "Name one of \"people\", or add this one there."};
    case Names::machine:
      return {"There is no machine " + quoted + ".", "Name one of \"machines\", or add this one there."};
    case Names::record:
      return {"There is no record " + quoted + ".", "Name the id of one of \"records\"."};
    case Names::tier:
      return {"No rulebook has a tier " + name + ".", "Name a tier of one of the rulebooks."};
    case Names::machine_class:
      return {"No rulebook has a class " + quoted + ".", "Name a class of one of the rulebooks."};
    case Names::on:
      return {"No rulebook has a target or class " + quoted + ".",
              "Name a class of one of the rulebooks, alone or with \"/\" and a mode."};
    case Names::standing_on:
      return {"No rulebook has a target " + quoted + ".",
              "Name a class without modes, or a class with \"/\" and one of its modes."};
    case Names::version:
    case Names::mode:
    case Names::gate:
      break;
  }
  return {};
}

}  // namespace

DefinedNames::DefinedNames(const json::NameScope& scope, const std::vector<Rulebook>& rulebooks,
                           const std::vector<Rulebook>& proposed, bool rulebooks_known)
    : rulebooks_known_(rulebooks_known) {
  for (const json::Named& one : scope.definitions) defined_[one.names].insert(one.name);
  for (const Rulebook& rulebook : rulebooks) add(rulebook);
  for (const Rulebook& rulebook : proposed) add(rulebook);
}

void DefinedNames::add(const Rulebook& rulebook) {
  for (const Tier& tier : rulebook.tiers) defined_[Names::tier].insert(std::to_string(tier.tier));
  for (const MachineClass& c : rulebook.classes) {
    defined_[Names::machine_class].insert(c.name);
    defined_[Names::on].insert(c.name);
  }
  for (const TargetName& target : targets_of(rulebook)) {
    defined_[Names::on].insert(target);
    defined_[Names::standing_on].insert(target);
  }
}

bool DefinedNames::is_defined(const json::Named& use) const {
  const auto names = defined_.find(use.names);
  return names != defined_.end() && names->second.contains(use.name);
}

void DefinedNames::check(json::Reading& reading) const {
  for (const json::Named& use : reading.names.uses) {
    const bool by_rulebooks = use.names == Names::tier || use.names == Names::machine_class ||
                              use.names == Names::on || use.names == Names::standing_on;
    const bool known = by_rulebooks ? rulebooks_known_ : !reading.names.unreadable.contains(use.names);
    if (!known || is_defined(use)) continue;
    Complaint complaint = undefined(use.names, use.name);
    if (use.names == Names::standing_on && is_defined({use.at, Names::machine_class, use.name}))
      complaint.what = "The class " + json::in_quotes(use.name) + " has modes, and each of them is a target.";
    reading.mistake(use.at, std::move(complaint.what), std::move(complaint.remedy));
  }
}

void DefinedNames::check_mode(json::Reading& reading, json::Value value, const AskMayStart& ask,
                              const std::vector<Machine>& machines) const {
  const auto machine =
      std::find_if(machines.begin(), machines.end(), [&](const Machine& m) { return m.id == ask.machine; });
  if (!rulebooks_known_ || machine == machines.end()) return;
  const std::string& c = machine->machine_class;
  if (!is_defined({value, Names::machine_class, c})) return;
  const auto mode = value.find("mode");
  // Without a mode the machine as a whole is asked about: each of the modes that its class has at that time.
  if (!mode || is_defined({value, Names::standing_on, c + "/" + ask.mode})) return;
  reading.mistake(
      *mode, "The machine's class " + json::in_quotes(c) + " has no mode " + json::in_quotes(ask.mode) + ".",
      "Name a mode that a rulebook gives this class.");
}

}  // namespace wm
