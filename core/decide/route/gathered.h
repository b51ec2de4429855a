#pragma once
// What may matter to a person's standing from an instant on: every requirement that may be asked, whatever
// rulebook is in force by then.
#include <set>
#include <vector>

#include "core/decide/route/offers.h"

namespace wm {

/// A gate that lets somebody by who had the rung at `by`, on the target.
struct Spared {
  NameId x;
  Rung rung;
  Instant by;
  auto operator<=>(const Spared&) const = default;
};

class Gathered {
 public:
  Gathered(const Standings& standings, Instant from) : standings_(standings), from_(from) {}

  /// Adds what a standing on x may rest on, through other standings, what must be given for a check-out, and
  /// the standings that make a use permitted.
  void standing(NameId x);
  void need(const Need& need, NameId x);

  /// In the order in which they were met.
  const std::vector<Asked>& asked() const { return asked_; }
  /// The targets met, in that order too: what a standing rests on mostly comes after it.
  const std::vector<NameId>& targets() const { return targets_; }
  /// Of gates that may spare somebody from then on by a standing that lies ahead itself.
  const std::set<Spared>& spared() const { return spared_; }

 private:
  void note_target(NameId x);
  void note_need(const Need& need, NameId x);
  void gates_of(NameId x);
  void work_through();

  const Standings& standings_;
  Instant from_;
  std::vector<Asked> asked_;
  std::set<Asked> known_asked_;
  std::vector<NameId> targets_;  // met so far: a list that is worked through
  std::size_t worked_through_ = 0;
  std::set<NameId> known_targets_;
  std::set<Spared> spared_;
};

}  // namespace wm
