#pragma once
// What a decision answers: the verdict with everything it rests on. Plain values; nothing here works
// anything out.
#include <optional>
#include <string>
#include <vector>

#include "core/records/record.h"
#include "core/rulebook/rulebook.h"

namespace wm {

enum class GateState { met, in_grace, unmet };
std::string_view word(GateState state);

/// Why one requirement holds or does not: the same tree as the requirement's own. Under a check-out that does
/// not hold stands what must be given for it, as it is at the instant asked about.
struct Reason {
  Requirement need;
  bool holds = false;
  std::optional<Instant> since;  // from when it has been so; nothing: always
  std::optional<Instant> until;  // the first later instant at which it is no longer so; nothing: never
  /// The records that carry it (a paper, an attempt, a check-out, the sessions counted); where it does not
  /// hold, those that came nearest or that took it away (a failed check-out, an incident).
  std::vector<RecordId> rests_on;
  /// For `practice` and `recent_use`: what has been reached. For lessons, quizzes and check-outs: the
  /// revision needed. 0 elsewhere.
  int minutes = 0, sessions = 0, revision_needed = 0;
  std::vector<Reason> of;
  friend bool operator==(const Reason&, const Reason&) = default;
};

struct GateAnswer {
  std::string id;
  Rung guards = Rung::supervised;
  GateState state = GateState::unmet;
  std::optional<Instant> due;
  std::optional<Instant> lapses;
  /// Whether it is `existing_until` alone that lets it hold.
  bool spared = false;
  Reason reason;
  friend bool operator==(const GateAnswer&, const GateAnswer&) = default;
};

/// A suspension in force, with the instant it ends by itself.
struct SuspensionAnswer {
  RecordId suspension;
  Instant since;
  std::optional<Instant> until;
  friend bool operator==(const SuspensionAnswer&, const SuspensionAnswer&) = default;
};

struct StandingAnswer {
  Rung standing = Rung::barred;
  std::optional<Instant> since, until;
  std::optional<Rung> next;  // from `until` on
  std::vector<GateAnswer> gates;
  std::vector<SuspensionAnswer> suspensions;
  std::optional<int> rulebook;  // the version in force
  /// Which targets of that rulebook the one asked about stands for: usually itself, none where it is unknown.
  std::vector<TargetName> stands_for;
  friend bool operator==(const StandingAnswer&, const StandingAnswer&) = default;
};

struct TimelineStep {
  Instant at;
  Rung standing;
  friend bool operator==(const TimelineStep&, const TimelineStep&) = default;
};

/// What stands in the way of starting a machine, each by itself. In order of the words that files use.
enum class Hindrance { barred, buddy, locked_out, no_supervisor, staffed };
std::string_view word(Hindrance h);

struct MayStart {
  bool may = false;
  std::vector<Hindrance> because;       // sorted
  std::vector<RecordId> lockouts;       // those still on
  std::vector<PersonId> can_supervise;  // of those present and not busy, sorted
  std::vector<Condition> conditions;    // of the class and its tier
  friend bool operator==(const MayStart&, const MayStart&) = default;
};

/// Records that, had they been entered too, would give a person a standing: as early as any such records
/// allow, and none to spare.
struct Route {
  std::optional<Instant> reaches;  // nothing: there is no way
  /// Whether it is proved that no way that gets there as early has fewer steps.
  bool shortest = true;
  /// The person's own documents, lessons, quizzes, sessions, uses and check-outs, in this order at each
  /// instant; ids "step-01" on.
  std::vector<Record> steps;
  friend bool operator==(const Route&, const Route&) = default;
};

/// What a rule's waiting times say of one more attempt at its quiz.
struct NextAttempt {
  Instant from;  // the first instant, not before the one asked about, at which an attempt counts
  /// How many that count may still go wrong at that instant before the rule asks to wait until some of them
  /// lie long enough back; nothing: any number.
  std::optional<int> left;
  friend bool operator==(const NextAttempt&, const NextAttempt&) = default;
};

}  // namespace wm
