// Everything that an entry names exists.
#include "core/time/text.h"
#include "db/check/checks.h"

namespace wm::db {
namespace {

Expected<void> check_target(const Case& c, const TargetName& target) {
  if (c.memory.target_known(target)) return {};
  return refuse("target", "No rulebook has '" + target + "'.",
                "Choose a machine class or mode of the rulebook.");
}

Expected<void> check_machine(const Case& c, const MachineId& machine) {
  if (!c.memory.class_of_machine(machine).empty()) return {};
  return refuse("machine", "There is no machine '" + machine + "'.", "Choose one of the shop's machines.");
}

Expected<void> check_scope(const Case& c, const Scope& scope) {
  if (const auto* target = std::get_if<TargetScope>(&scope)) return check_target(c, target->target);
  const auto* tier = std::get_if<TierScope>(&scope);
  if (tier == nullptr || c.memory.tier_known(tier->tier)) return {};
  return refuse("scope", "No rulebook has a tier " + std::to_string(tier->tier) + ".",
                "Choose a tier of the rulebook.");
}

Expected<void> check_class(const Case& c, const std::string& name) {
  if (name.find('/') == std::string::npos && c.memory.target_known(name)) return {};
  return refuse("class", "No rulebook has a class '" + name + "'.", "Choose a class of the rulebook.");
}

Expected<void> check_unit(const Case& c, const MachineAdded& added) {
  if (added.machine.empty())
    return refuse("machine", "The machine has no id.", "Give it one, such as 'bandsaw-2'.");
  return check_class(c, added.machine_class);
}

/// Fields are told apart by their names, which all kinds share.
template <class F>
Expected<void> check(const Case& c, const F& f) {
  Expected<void> fine;
  const auto person = [&](const PersonId& id, const char* where) {
    if (fine) fine = check_known_person(c, id, where);
  };
  if constexpr (std::is_same_v<F, OtherHours>) {
    if (!f.person.empty()) person(f.person, "person");
  } else if constexpr (requires { f.person; }) {
    person(f.person, "person");
  }
  if constexpr (requires { f.assessor; }) person(f.assessor, "assessor");
  if constexpr (std::is_same_v<F, Booking>) {
    if (!f.second.empty()) person(f.second, "second");
  }
  if constexpr (std::is_same_v<F, Started>) {
    if (!f.supervisor.empty()) person(f.supervisor, "supervisor");
  } else if constexpr (requires { f.supervisor; }) {
    person(f.supervisor, "supervisor");
  }
  if constexpr (requires { f.key_holder; }) {
    if (!f.key_holder.empty()) person(f.key_holder, "key_holder");
  }
  if constexpr (requires { f.put_on_by; }) {
    if (!f.put_on_by.empty()) person(f.put_on_by, "put_on_by");
  }
  if constexpr (requires { f.host; }) person(f.host, "host");
  if constexpr (requires { f.instructors; }) {
    for (const PersonId& each : f.instructors) person(each, "instructors");
  }
  if constexpr (std::is_same_v<F, Close>) person(f.other, "other");
  if constexpr (std::is_same_v<F, Join>) person(f.keep, "keep"), person(f.other, "other");
  if constexpr (requires { f.target; }) {
    if (fine) fine = check_target(c, f.target);
  }
  if constexpr (requires { f.scope; }) {
    if (fine) fine = check_scope(c, f.scope);
  }
  if constexpr (std::is_same_v<F, Lasts>) {
    if (fine) fine = check_class(c, f.machine_class);
  }
  if constexpr (std::is_same_v<F, MachineAdded>) {
    if (fine) fine = check_unit(c, f);
  } else if constexpr (requires { f.machine; }) {
    const bool may_lack =
        std::is_same_v<F, SheetMarks> || std::is_same_v<F, Happened> || std::is_same_v<F, Altered>;
    if (fine && !(may_lack && f.machine.empty())) fine = check_machine(c, f.machine);
  }
  return fine;
}

}  // namespace

std::string unit_words(const Case& c, const MachineId& id) {
  const std::string label = c.memory.label_of_machine(id);
  return "'" + (label.empty() ? id : label) + "' (" + c.memory.class_of_machine(id) + ")";
}

std::string said(const Case& c, Instant t) { return said(c.zone, t); }

std::string said(const Zone& zone, Instant t) {
  const LocalTime local = zone.local(t);
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return to_text(local.day) + " " + two(local.hour) + ":" + two(local.minute);
}

std::string said(Day d) { return to_text(d); }

Expected<void> check_known_person(const Case& c, const PersonId& person, const char* where) {
  if (c.memory.person(person) != nullptr) return {};
  return refuse(where, "There is nobody with the id '" + person + "'.", "Enter the person first.");
}

Expected<void> check_names(const Case& c, const AnyFact& fact) {
  return std::visit(
      [&](const auto& kind) { return std::visit([&](const auto& f) { return check(c, f); }, kind); }, fact);
}

}  // namespace wm::db
