#pragma once
// Who is in the shop and what they are at, at one moment, by presence, bookings under way and machines
// started.
#include "db/journal/memory.h"

namespace wm::db {

/// A machine that somebody has started and not left.
struct AtMachine {
  RecordId started;
  PersonId person;
  MachineId machine;
  TargetName target;
  PersonId supervisor;  // empty: nobody
  Instant since;
};

struct Floor {
  std::vector<PersonId> present;  // came in on that day and has not left, sorted
  bool staffed = false;           // one of them is on duty
};

/// People joined to another by whom they count for.
Floor floor_at(const Memory& memory, const Zone& zone, Instant at);
/// Machines started and not left by `at`, in order.
std::vector<AtMachine> at_machines(const Memory& memory, Instant at);
/// Who has no hand free at `at` for `person`: at a machine, supervising there, or in a one-on-one with
/// somebody else.
std::vector<PersonId> busy_for(const Memory& memory, const PersonId& person, Instant at, Instant now);

}  // namespace wm::db
