// What happened, with everybody who was there.
#include <algorithm>

#include "core/rulebook/checkouts.h"
#include "db/check/checks.h"

namespace wm::db {
namespace {

Expected<void> check_named_once(const Case& c, const std::vector<Involved>& people) {
  for (auto one = people.begin(); one != people.end(); ++one) {
    const bool again = std::any_of(people.begin(), one, [&](const Involved& other) {
      return other.part == one->part && c.same(other.person, one->person);
    });
    if (again)
      return refuse("people", c.memory.name(one->person) + " is named twice with the same part.",
                    "Leave one of them out.");
  }
  return {};
}

/// A name is asked for only where whoever was working loses something by it: what nobody loses anything by is
/// told the more readily without one.
Expected<void> check_unnamed(const Case& c, const RecordIncident& f) {
  const Rulebook* rulebook = c.decider().in_force(c.at);
  const bool costs = f.severity != near_miss && rulebook != nullptr &&
                     f.severity <= renewed_after_severity(*rulebook, f.target);
  if (!costs) return {};
  if (f.people.empty())
    return refuse("people",
                  "After an incident as grave as this the rules ask that whoever was working is checked out "
                  "again, and nobody who was there is named.",
                  "Name who was working; or, where nobody was, somebody who was there.");
  if (std::find(f.unnamed.begin(), f.unnamed.end(), Part::operating) == f.unnamed.end()) return {};
  return refuse("unnamed",
                "After an incident as grave as this the rules ask that whoever was working is checked out "
                "again, and they are not named.",
                "Name who was working.");
}

}  // namespace

Happened told_of(const RecordIncident& a, std::vector<RecordId> incidents) {
  return {a.target, a.machine, a.severity, a.unnamed, std::move(incidents), a.what};
}

Expected<void> check_incident(const Case& c, const RecordIncident& f) {
  if (f.severity < 1 || f.severity > near_miss)
    return refuse("severity", "How grave it was is said from 1, the gravest, to 4, a near miss.",
                  "Choose one of the four.");
  if (f.what.find_first_not_of(" \t\r\n") == std::string::npos)
    return refuse("what", "It is not said what happened.", "Say it in a few words.");
  // The tale's own names and time; the parts of those who are named share them.
  if (auto fine = check_fact(c, AnyFact(ShopFact(told_of(f, {})))); !fine) return fine;
  if (!f.machine.empty() && c.memory.class_of_machine(f.machine) != class_of(f.target))
    return refuse("machine", "This unit is not one of '" + f.target + "'.",
                  "Choose the machine at which it happened.");
  for (const Involved& one : f.people)
    if (auto fine = check_known_person(c, one.person); !fine) return fine;
  if (auto fine = check_named_once(c, f.people); !fine) return fine;
  return check_unnamed(c, f);
}

}  // namespace wm::db
