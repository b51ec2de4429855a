#pragma once
// Whether the computer's clock can be believed: when things were entered rests on it.
#include <cstdint>
#include <functional>
#include <optional>

#include "core/problem.h"
#include "core/time/zone.h"

namespace wm::db {

/// Notices a clock that was set by more than an hour: behind the last entry, or against the time that has
/// passed since the store was opened. Summer time is no jump: instants know nothing of it.
class ClockWatch {
 public:
  /// Seconds that have passed since some moment, whatever the clock was set to. Nothing: not known.
  using Passed = std::function<std::int64_t()>;
  ClockWatch() = default;
  ClockWatch(Passed passed, Instant now) : passed_(std::move(passed)) { believe(now); }

  /// From now on the clock counts as right.
  void believe(Instant now);
  /// How many seconds the clock has jumped, ahead or (less than 0) back; 0 where it can be believed.
  /// `confirmed`: what it showed when a manager confirmed it, if nothing later has been recorded since.
  std::int64_t jump(Instant now, Instant last_recorded, std::optional<Instant> confirmed) const;

 private:
  Passed passed_;
  Instant believed_;
  std::int64_t passed_then_ = 0;
};

/// Says that the clock has jumped, and what can be done.
Problem clock_problem(const Zone& zone, Instant now, std::int64_t jump);

}  // namespace wm::db
