#include "app/machines/units.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace wm::app {
namespace {

template <class T>
const T* shop_fact(const db::Entry& entry) {
  const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
  return fact ? std::get_if<T>(fact) : nullptr;
}

template <class T>
const T* fact(const db::Entry& entry) {
  const auto* fact = std::get_if<Fact>(&entry.fact);
  return fact ? std::get_if<T>(fact) : nullptr;
}

/// The latest entry of each unit counts.
std::map<MachineId, db::MachineAdded> added(const Session& session) {
  std::map<MachineId, db::MachineAdded> latest;
  for (const db::Entry& entry : session.store().entries()) {
    const auto* unit = shop_fact<db::MachineAdded>(entry);
    if (unit && session.counts(entry) && entry.at <= session.at()) latest[unit->machine] = *unit;
  }
  return latest;
}

const MachineId* locked_machine(const Session& session, const RecordId& lockout) {
  const auto& entries = session.store().entries();
  const auto found = std::ranges::find(entries, lockout, &db::Entry::id);
  const auto* lock = found == entries.end() ? nullptr : fact<Lockout>(*found);
  return lock ? &lock->machine : nullptr;
}

}  // namespace

std::vector<UnitState> unit_states(Session& session) {
  const Rulebook* rulebook = session.decider().in_force(session.at());
  std::map<MachineId, std::vector<db::LockOn>> locks;
  for (db::LockOn& lock : session.store().locks_on(session.at(), session.known()))
    locks[lock.machine].push_back(std::move(lock));
  std::vector<UnitState> found;
  for (const auto& [id, unit] : added(session)) {
    const MachineClass* machine = rulebook ? find_class(*rulebook, unit.machine_class) : nullptr;
    found.push_back({id, unit.machine_class, unit.label,
                     machine ? std::optional(machine->tier) : std::nullopt, std::move(locks[id])});
  }
  std::ranges::sort(found, [](const UnitState& a, const UnitState& b) {
    const auto key = [](const UnitState& u) {
      return std::tuple(u.tier.value_or(1000), u.machine_class, u.label, u.id);
    };
    return key(a) < key(b);
  });
  return found;
}

bool is_about(const db::Entry& entry, const UnitState& unit, const Session& session) {
  if (const auto* change = fact<Change>(entry)) return class_of(change->target) == unit.machine_class;
  if (const auto* altered = shop_fact<db::Altered>(entry)) {
    if (altered->change.empty())
      return altered->machine.empty() ? class_of(altered->target) == unit.machine_class
                                      : altered->machine == unit.id;
    const db::Entry* change = session.entry(altered->change);
    return change && session.counts(*change) && is_about(*change, unit, session);
  }
  if (const auto* added = shop_fact<db::MachineAdded>(entry)) return added->machine == unit.id;
  if (const auto* lock = fact<Lockout>(entry)) return lock->machine == unit.id;
  if (const auto* happened = shop_fact<db::Happened>(entry))
    return happened->machine.empty() ? class_of(happened->target) == unit.machine_class
                                     : happened->machine == unit.id;
  const RecordId* lockout = nullptr;
  if (const auto* release = fact<Release>(entry)) lockout = &release->lockout;
  if (const auto* tag = shop_fact<db::Tag>(entry)) lockout = &tag->lockout;
  if (const auto* reached = shop_fact<db::Reached>(entry)) lockout = &reached->lockout;
  const MachineId* machine = lockout ? locked_machine(session, *lockout) : nullptr;
  return machine && *machine == unit.id;
}

}  // namespace wm::app
