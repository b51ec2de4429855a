#pragma once
// The shop at one moment out of its records: presence, visits, bookings under way, machines started, locks.
// `known`: by what had been recorded by then, and not struck out; nothing: by all that counts.
#include "core/decide/decider.h"
#include "db/floor.h"
#include "db/journal/memory.h"

namespace wm::db {

Floor floor_at(const Memory& memory, const Zone& zone, Instant at, std::optional<Instant> known = {});
/// Machines started and not left by `at`, in order.
std::vector<AtMachine> at_machines(const Memory& memory, Instant at, std::optional<Instant> known = {});
/// Who of a start's two people was noted as gone first, from the start on and up to `at`; nothing: neither.
std::optional<NotedGone> noted_gone(const Memory& memory, const Entry& start, Instant at,
                                    std::optional<Instant> known = {});
/// Locks that are on at `at`, in order of when they were put on.
std::vector<LockOn> locks_on(const Memory& memory, Instant at, std::optional<Instant> known = {});
/// Who put a lock on: whom its tag names, or who entered it.
PersonId whose_lock(const Memory& memory, const Entry& lockout, std::optional<Instant> known = {});

/// Whether whoever supervises on these targets has a hand free for one more, by the rulebook's tiers.
bool takes_one_more(const Rulebook* rulebook, const std::vector<TargetName>& supervised,
                    const TargetName& more);
/// Who has no hand free at `at` for `person` on `target`: at a machine, supervising there as many as the
/// rules allow, or in a one-on-one with somebody else.
std::vector<PersonId> busy_for(const Memory& memory, const PersonId& person, Instant at, Instant now,
                               const Rulebook* rulebook, const TargetName& target);
/// One-on-ones under way to which somebody came, that keep a person from starting a unit.
struct OneOnOnes {
  std::optional<Booked> of_others;  // on that unit
  std::optional<Booked> elsewhere;  // their own, on another
};
OneOnOnes one_on_ones_at(const Memory& memory, const PersonId& person, const MachineId& machine, Instant at,
                         Instant now);
/// Whether a person may start a unit at `at`, for that target.
StartNow start_at(const Memory& memory, const Zone& zone, Decider& decider, const PersonId& person,
                  const MachineId& machine, const TargetName& target, Instant at, Instant now);

}  // namespace wm::db
