#include "db/journal/known_shop.h"

#include <unordered_map>

namespace wm::db {
namespace {

/// Changes whom a record is about to whom they count for.
template <class CountsFor>
void rename(Fact& fact, CountsFor counts_for) {
  std::visit(
      [&](auto& f) {
        if constexpr (requires { f.person; }) f.person = counts_for(f.person);
        if constexpr (requires { f.assessor; }) f.assessor = counts_for(f.assessor);
        if constexpr (requires { f.supervisor; }) f.supervisor = counts_for(f.supervisor);
      },
      fact);
}

void add_machine(Shop& shop, const MachineAdded& added) {
  for (Machine& machine : shop.machines) {
    if (machine.id != added.machine) continue;
    machine.machine_class = added.machine_class;
    return;
  }
  shop.machines.push_back({added.machine, added.machine_class});
}

}  // namespace

Shop known_shop(const Memory& memory, const Zone& zone, std::optional<Instant> known) {
  Shop shop;
  shop.zone = zone;
  std::unordered_map<PersonId, PersonId> joined;
  for (const Person& person : memory.people()) {
    PersonId root = memory.joined(person.id, known);
    if (root != person.id)
      joined.emplace(person.id, std::move(root));
    else if (!known || memory.person_since(person.id) <= *known)
      shop.people.push_back(person.id);
  }
  for (const Memory::IssuedRulebook& issued : memory.issued())
    if (counts(*memory.find(issued.record), known)) shop.rulebooks.push_back(issued.rulebook);
  shop.records.reserve(memory.entries().size());
  for (const Entry& entry : memory.entries()) {
    if (!counts(entry, known)) continue;
    if (const auto* added = as<MachineAdded>(entry.fact)) add_machine(shop, *added);
    const Fact* fact = std::get_if<Fact>(&entry.fact);
    if (fact == nullptr) continue;
    Record& record =
        shop.records.emplace_back(Record{entry.id, entry.at, entry.recorded, entry.voided, *fact});
    if (joined.empty()) continue;
    rename(record.fact, [&](const PersonId& id) {
      const auto found = joined.find(id);
      return found == joined.end() ? id : found->second;
    });
  }
  return shop;
}

Record known_record(const Memory& memory, const Entry& entry) {
  Record record{entry.id, entry.at, entry.recorded, entry.voided, std::get<Fact>(entry.fact)};
  rename(record.fact, [&](const PersonId& id) { return memory.joined(id); });
  return record;
}

}  // namespace wm::db
