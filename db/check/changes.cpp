// Locks on machines, and what was changed on them.
#include "db/check/checks.h"

namespace wm::db {

Expected<void> check_out_of_service(const Case& c, const PutOutOfService& action) {
  if (auto fine = check_fact(c, AnyFact(Fact(Lockout{action.machine}))); !fine) return fine;
  if (auto fine = check_said(action.reason, "reason", "A machine is put out of service with a reason.");
      !fine)
    return fine;
  if (!action.put_on_by.empty())
    if (auto fine = check_known_person(c, action.put_on_by, "put_on_by"); !fine) return fine;
  return action.key_holder.empty() ? Expected<void>{}
                                   : check_known_person(c, action.key_holder, "key_holder");
}

Expected<void> check_tag(const Case& c, const Tag& f) {
  if (c.memory.live<Lockout>(f.lockout) == nullptr)
    return refuse("lockout", "There is no lock with the id '" + f.lockout + "'.",
                  "Choose one from the list.");
  if (auto fine = check_said(f.reason, "reason", "A machine is put out of service with a reason."); !fine)
    return fine;
  // Else whoever wants it off could make it theirs.
  if (f.put_on_by.empty() || !c.judges_ability()) return {};
  return refuse("put_on_by", "Whose lock it is was said when it was put on.",
                "Leave that out; or strike the lock out and put it on anew.");
}

Expected<void> check_change(const Case& c, const RecordChange& f) {
  if (auto fine = check_fact(c, AnyFact(Fact(Change{f.target}))); !fine) return fine;
  if (!f.machine.empty() && c.memory.class_of_machine(f.machine) != class_of(f.target))
    return refuse("machine", "This unit is not one of '" + f.target + "'.",
                  "Choose the unit that was changed.");
  if (f.as_before && f.kind != Alteration::repair && f.kind != Alteration::other)
    return refuse("as_before",
                  "What cuts, guards or switches a machine, and where it stands, changes how it is used.",
                  "Record it as a change of its use; or say that it was a repair, or another change.");
  return check_said(f.what, "what", "It is not said what was changed.");
}

}  // namespace wm::db
