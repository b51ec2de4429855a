// One-on-ones: nobody and no unit is in two at once, and only with who can assess on what can be used.
#include <algorithm>

#include "db/check/checks.h"

namespace wm::db {
namespace {

bool has(const std::vector<PersonId>& list, const PersonId& id) {
  return std::find(list.begin(), list.end(), id) != list.end();
}

/// Cancelled, or the member did not come: the time is free again.
bool stands(const Memory& memory, const Entry& entry) {
  if (entry.voided || memory.about<Cancel>(entry.id) != nullptr) return false;
  const Entry* attendance = memory.about<Attendance>(entry.id);
  return attendance == nullptr || as<Attendance>(attendance->fact)->turnout != Turnout::not_come;
}

Expected<void> check_free(const Case& c, const Booking& f) {
  const auto member = c.memory.aliases(f.person), assessor = c.memory.aliases(f.assessor);
  for (const std::size_t i : c.memory.of_kind("booking")) {
    const Entry& entry = c.memory.entries()[i];
    const Booking& other = *as<Booking>(entry.fact);
    if (other.to <= f.from || f.to <= other.from) continue;
    const bool same_machine = other.machine == f.machine;
    const bool same_assessor = has(assessor, other.assessor) || has(assessor, other.person);
    const bool same_member = has(member, other.person) || has(member, other.assessor);
    if ((!same_machine && !same_assessor && !same_member) || !stands(c.memory, entry)) continue;
    const std::string who = same_machine    ? "The machine '" + f.machine + "'"
                            : same_assessor ? c.memory.name(f.assessor)
                                            : c.memory.name(f.person);
    return refuse(same_machine    ? "machine"
                  : same_assessor ? "assessor"
                                  : "person",
                  who + " is booked already from " + said(c, other.from) + " to " + said(c, other.to) + ".",
                  "Choose another time, or cancel that booking.");
  }
  return {};
}

Expected<void> check_in_service(const Case& c, const MachineId& machine) {
  for (const std::size_t i : c.memory.lockouts_of(machine)) {
    const Entry& lockout = c.memory.entries()[i];
    if (lockout.voided || lockout.at > c.now || c.memory.about<Release>(lockout.id) != nullptr) continue;
    return refuse("machine", "The machine '" + machine + "' is out of service.", "Choose another machine.");
  }
  return {};
}

}  // namespace

Expected<void> check_booking(const Case& c, const Booking& f) {
  if (f.from < first_instant || f.to > last_instant)
    return refuse("from", "The booking lies outside the years 1900 to 2999.", "Check the year.");
  if (f.to <= f.from) return refuse("to", "The booking ends before it begins.", "Choose a later end.");
  if (f.to <= c.at) return refuse("from", "The booking lies in the past.", "Choose a time to come.");
  if (f.to > f.from + 86400)
    return refuse("to", "The booking is longer than a day.", "Choose an earlier end.");
  if (c.same(f.person, f.assessor))
    return refuse("assessor", "Nobody is booked with themself.", "Choose another assessor.");
  if (class_of(f.target) != c.memory.class_of_machine(f.machine))
    return refuse("machine", "The machine '" + f.machine + "' is not of '" + f.target + "'.",
                  "Choose a machine of that class.");
  if (auto fine = check_free(c, f); !fine) return fine;
  if (c.founding) return {};
  if (auto fine = check_in_service(c, f.machine); !fine) return fine;
  if (c.decider().able_to_assess(c.memory.joined(f.assessor), f.target, f.from)) return {};
  return refuse(
      "assessor",
      c.memory.name(f.assessor) + " is not able to assess '" + f.target + "' on " + said(c, f.from) + ".",
      "Choose an assessor who is.");
}

}  // namespace wm::db
