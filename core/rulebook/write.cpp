#include "core/rulebook/form.h"
#include "core/rulebook/json.h"

namespace wm {

namespace {

/// By value: a form fills in as well as reads out, so it takes what it describes by reference.
template <class T>
std::string formed(T thing) {
  json::Writer writer;
  forms::form(writer, thing);
  return json::compact(writer.members());
}

template <class Choice>
std::string with_kind(Choice choice) {
  json::Writer writer;
  std::visit([&](auto& one) { forms::form(writer, one); }, choice);
  std::vector<json::Member> members{{"kind", json::in_quotes(kind_word(choice))}};
  members.insert(members.end(), writer.members().begin(), writer.members().end());
  return json::compact(members);
}

}  // namespace

std::string written(const Requirement& requirement) { return with_kind(requirement.need); }
std::string written(const Condition& condition) { return with_kind(condition); }
std::string written(const Gate& gate) { return formed(gate); }
std::string written(const Tier& tier) { return formed(tier); }
std::string written(const MachineClass& machine_class) { return formed(machine_class); }
std::string written(const Retry& retry) { return formed(retry); }

std::string to_json(const Rulebook& rulebook) { return formed(rulebook); }

}  // namespace wm
