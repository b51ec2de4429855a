#include "db/journal/known_shop.h"

#include <unordered_map>

namespace wm::db {
namespace {

/// Changes whom a record is about to whom they count for.
class Renamer {
 public:
  Renamer(const Memory& memory, std::optional<Instant> known) {
    for (const Person& person : memory.people()) {
      PersonId root = memory.joined(person.id, known);
      if (root != person.id) to_.emplace(person.id, std::move(root));
    }
  }
  bool renames(const PersonId& id) const { return to_.contains(id); }
  void apply(Fact& fact) const {
    if (to_.empty()) return;
    std::visit(
        [&](auto& f) {
          if constexpr (requires { f.person; }) rename(f.person);
          if constexpr (requires { f.assessor; }) rename(f.assessor);
          if constexpr (requires { f.supervisor; }) rename(f.supervisor);
        },
        fact);
  }

 private:
  void rename(PersonId& id) const {
    if (const auto found = to_.find(id); found != to_.end()) id = found->second;
  }
  std::unordered_map<PersonId, PersonId> to_;
};

bool is_known(const Entry& entry, std::optional<Instant> known) {
  if (!known) return !entry.voided;
  return entry.recorded <= *known && (!entry.voided || *known < *entry.voided);
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
  const Renamer renamer(memory, known);
  for (const Person& person : memory.people())
    if (!renamer.renames(person.id) && (!known || memory.person_since(person.id) <= *known))
      shop.people.push_back(person.id);
  for (const Memory::Issued& issued : memory.issued())
    if (is_known(*memory.find(issued.record), known)) shop.rulebooks.push_back(issued.rulebook);
  shop.records.reserve(memory.entries().size());
  for (const Entry& entry : memory.entries()) {
    if (!is_known(entry, known)) continue;
    if (const auto* added = as<MachineAdded>(entry.fact)) add_machine(shop, *added);
    const Fact* fact = std::get_if<Fact>(&entry.fact);
    if (fact == nullptr) continue;
    Record& record =
        shop.records.emplace_back(Record{entry.id, entry.at, entry.recorded, entry.voided, *fact});
    renamer.apply(record.fact);
  }
  return shop;
}

}  // namespace wm::db
