#pragma once
// The shop at one moment: who is in it and what they are at, which machines are out of service, and whether
// somebody may start one. Plain structs, worked out by the store alone.
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/decide/answers.h"
#include "core/diary/hours.h"
#include "db/facts.h"

namespace wm::db {

/// Whoever was noted as gone from the shop.
struct NotedGone {
  PersonId person;
  Instant at;
  friend bool operator==(const NotedGone&, const NotedGone&) = default;
};

/// A machine that somebody has started and not left.
struct AtMachine {
  RecordId started;
  PersonId person;
  MachineId machine;
  TargetName target;
  PersonId supervisor;  // empty: nobody
  Instant since;
  /// Who of the two was noted as gone first since then, though nobody said that the machine was left.
  std::optional<NotedGone> gone = {};
  friend bool operator==(const AtMachine&, const AtMachine&) = default;
};

/// A visitor for a day who is in.
struct VisitorIn {
  RecordId visit;
  std::string name;  // empty: erased
  std::string paper;
  PersonId host;
  bool host_in = false;  // whether the host is in too
  Instant since;
  friend bool operator==(const VisitorIn&, const VisitorIn&) = default;
};

/// Whoever counts as another person stands under whom they count for.
struct Floor {
  std::vector<PersonId> present;       // came in and has not left (README.md, "Who is in"), sorted
  std::vector<PersonId> staff;         // of those, on duty
  std::vector<AtMachine> at_machines;  // in order of their entry
  std::vector<VisitorIn> visitors;     // in order of their entry
  /// Who is in each one-on-one under way to which somebody came: the member, the assessor, and the second
  /// where there are two.
  std::vector<std::vector<PersonId>> together;
  friend bool operator==(const Floor&, const Floor&) = default;
};

/// An attempt to reach whose lock it is.
struct Attempt {
  Instant at;
  PersonId by;
  std::string how;
  friend bool operator==(const Attempt&, const Attempt&) = default;
};

/// A lock that is on.
struct LockOn {
  RecordId lockout;
  MachineId machine;
  Instant since;
  PersonId whose;       // who put it on; empty: not known, since it was taken in from older records
  PersonId entered_by;  // empty: taken in
  Tag tag;
  std::vector<Attempt> attempts;
  friend bool operator==(const LockOn&, const LockOn&) = default;
};

/// Whether somebody may start a unit now, with who is in and has a hand free.
struct StartNow {
  MayStart may;  // by the rules
  bool needs_supervisor = false;
  std::optional<AtMachine> unit_in_use;  // who works this unit
  std::optional<AtMachine> at_another;   // where the person works or supervises already
  /// One-on-ones under way to which somebody came: of others on this unit, and of the person elsewhere.
  std::optional<Booked> unit_taken, in_one_on_one;
  /// Somebody else who has the unit booked at this moment: no hindrance, but to be said.
  std::optional<Booked> booked_for;
  bool possible() const { return may.may && !unit_in_use && !at_another && !unit_taken && !in_one_on_one; }
  friend bool operator==(const StartNow&, const StartNow&) = default;
};

}  // namespace wm::db
