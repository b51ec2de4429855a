#pragma once
// Which of a person's records could carry a requirement, and how long each would.
#include <absl/functional/function_ref.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "core/decide/answers.h"
#include "core/decide/book.h"
#include "core/decide/known.h"

namespace wm {

/// One record and the time it covers for a requirement, were it to count.
struct Cover {
  Instant from;
  Instant to;   // it lapses here, grace included
  Instant due;  // it would lapse here without grace
  RecordNo no;
  int minutes = 0;
  /// Whose ability to assess or to supervise it depends on; no_name where it counts by itself.
  NameId witness = no_name;
  /// The target that the witness (or, for a use, the person) had to have a standing on; no_name: the one
  /// asked about.
  NameId target = no_name;
  enum class Counts { always, checkout, supervised, use } counts = Counts::always;

  Span span(bool strict) const { return {from, strict ? due : to}; }
};

/// Tells each cover for need (of a leaf kind: not standing, tier_standing or group) of person on target x, of
/// records that happened at or before `horizon`, in order of time, for as long as `each` answers yes; those
/// that lapse by `since` may be left out. Quizzes are those counted and passed, check-outs the passed ones;
/// whether a check-out, a supervised record or a use counts is for the caller to find out.
void for_each_cover(const Known& known, const Need& need, NameId person, NameId x, Instant since,
                    Instant horizon, absl::FunctionRef<bool(const Cover&)> each);
/// All of them.
std::vector<Cover> covers(const Known& known, const Need& need, NameId person, NameId x, Instant horizon);

/// The revision needed at t for an item whose rule asks for the current one; 0 where nothing is in force.
int revision_needed(const Known& known, const Need& need, Instant t);

/// Whether that attempt's marks are enough: 100 * correct >= pass_percent * total, and no critical one
/// missed.
bool passed(const KnownQuiz& attempt, int pass_percent);

/// The attempts at need's quiz that count by its retry rule, up to `horizon`, in order.
std::vector<const KnownQuiz*> counted_attempts(const Known& known, const Need& need, NameId person,
                                               Instant horizon);

/// The greatest revision of the need's item that was published by t; 0 where none was.
int revision_published(const Known& known, const Need& need, Instant t);

/// Whether one more attempt at `at` would count by need's retry rule, entered after those whose id lies
/// before "step-".
bool attempt_would_count(const Known& known, const Need& need, NameId person, Instant at);

/// The first instant from `at` on at which one more attempt would count, and how many are left then.
NextAttempt next_attempt_at(const Known& known, const Need& need, NameId person, Instant at);

/// The cover of a record that does not exist: made at `at`, of the greatest revision published by then. For
/// every kind that has covers but age; whether it would count is for the caller to find out.
Cover supposed_cover(const Known& known, const Need& need, NameId person, NameId x, Instant at);

/// Every instant at which a supposed cover may end or begin to be another: publications coming into force,
/// what takes check-outs away, and for quizzes what a retry rule reckons from.
std::vector<Instant> supposed_moments(const Known& known, const Need& need, NameId person, NameId x);

}  // namespace wm
