#include "db/journal/proved_birth.h"

#include <set>

#include "core/time/period.h"

namespace wm::db {
namespace {

void add_ages(const Requirement& requirement, std::set<int>& ages) {
  std::visit(
      [&](const auto& need) {
        if constexpr (requires { need.years; }) ages.insert(need.years);
        if constexpr (requires { need.of; })
          for (const Requirement& one : need.of) add_ages(one, ages);
      },
      requirement.need);
}

std::set<int> ages_asked_for(const Memory& memory) {
  std::set<int> ages;
  for (const Memory::IssuedRulebook& issued : memory.issued())
    for (const TargetName& target : targets_of(issued.rulebook))
      for (const Gate* gate : gates_of(issued.rulebook, target)) add_ages(gate->need, ages);
  return ages;
}

std::optional<Day> born(const Memory& memory, const PersonId& person) {
  std::optional<Day> day;
  for (const std::size_t i : memory.of_kind("birth")) {
    const Entry& entry = memory.entries()[i];
    if (!entry.voided && as<Birth>(entry.fact)->person == person) day = as<Birth>(entry.fact)->born;
  }
  return day;
}

}  // namespace

std::optional<Day> proved_birth(const Memory& memory, const Zone& zone, const PersonId& person, Instant now) {
  const auto birth = born(memory, person);
  if (!birth) return std::nullopt;
  std::optional<Day> earliest;
  for (const int years : ages_asked_for(memory)) {
    const Day of_age = birthday(*birth, years);
    if (of_age > zone.day(now)) continue;
    Day shown = zone.day(now);
    for (const Entry& entry : memory.entries()) {
      if (subject_of(entry.fact).person != person || zone.day(entry.recorded) < of_age) continue;
      shown = zone.day(entry.recorded);
      break;
    }
    // The latest birth date that somebody of this age on that day may have.
    Day latest = *birth;
    while (birthday(latest + 1, years) <= shown) latest = latest + 1;
    if (!earliest || latest < *earliest) earliest = latest;
  }
  return earliest;
}

}  // namespace wm::db
