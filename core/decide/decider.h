#pragma once
// The rules engine: who may use which machine, why, since when and until when.
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/decide/answers.h"
#include "core/records/shop.h"
#include "core/time/steps.h"

namespace wm {

class Standings;

/// Answers questions about one shop as known at one instant (`known`: only what had been recorded by then,
/// and not struck out by then; nothing: all that is known, less what has been struck out).
///
/// Answers are kept, so asking again is cheap; not safe for use from two threads at once. Names that the shop
/// does not have are nobody and nothing: barred, not an error. The meaning of every decision stands in
/// core/decide/README.md.
class Decider {
 public:
  explicit Decider(const Shop& shop, std::optional<Instant> known = std::nullopt);
  ~Decider();
  Decider(Decider&&) noexcept;
  Decider& operator=(Decider&&) noexcept;

  /// The whole answer at `at`: the rung, its bounds in time, every gate with its state and its reasons.
  StandingAnswer standing(std::string_view person, std::string_view target, Instant at);
  /// The rung alone, much faster.
  Rung rung(std::string_view person, std::string_view target, Instant at);
  /// The standing over all time.
  const Steps<Rung>& standing_steps(std::string_view person, std::string_view target);
  /// The first step at `from`, then each change with `from < at <= to`.
  std::vector<TimelineStep> timeline(std::string_view person, std::string_view target, Instant from,
                                     Instant to);

  /// Whether `person` may start `machine` (in `mode`, or "" for the class as a whole) with these people
  /// present.
  MayStart may_start(std::string_view person, std::string_view machine, std::string_view mode, Instant at,
                     bool staffed, std::span<const PersonId> present, std::span<const PersonId> busy);

  /// The check-outs that a standing may be open under, by how they left things: of each check-out that a
  /// rulebook in force by `at` has asked for there the last good one by then, whatever became of it since,
  /// and those passed after it that are not good (all, where none is). A restriction of one of them stands.
  std::vector<RecordId> last_checkouts(std::string_view person, std::string_view target, Instant at);

  /// Everyone whose standing is at least `at_least`, sorted.
  std::vector<PersonId> who(std::string_view target, Instant at, Rung at_least);
  /// Everyone able to assess the target, sorted.
  std::vector<PersonId> assessors(std::string_view target, Instant at);
  bool able_to_assess(std::string_view person, std::string_view target, Instant at);
  bool able_to_supervise(std::string_view person, std::string_view target, Instant at);

  /// The quickest way to at least `to`, from `at` on.
  Route route(std::string_view person, std::string_view target, Rung to, Instant at);

  /// When somebody can next try a rule's quiz so that it counts. Of the rule, its quiz, pass mark and retry
  /// matter.
  NextAttempt next_attempt(std::string_view person, const NeedQuiz& rule, Instant at);

  /// Everyone of the shop, sorted.
  std::vector<PersonId> people() const;
  /// The targets that any known rulebook has, sorted.
  std::vector<TargetName> targets() const;
  /// The rulebook in force at t, or nothing.
  const Rulebook* in_force(Instant t) const;

 private:
  friend class Current;
  /// Over what another keeps; it must outlive this.
  explicit Decider(Standings& standings);

  struct Engine;
  std::unique_ptr<Engine> engine_;
};

}  // namespace wm
