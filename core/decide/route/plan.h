#pragma once
// The fewest records that give a person a standing at one instant: which must be there for it, said as a
// covering problem.
#include <map>
#include <set>
#include <tuple>
#include <vector>

#include "core/decide/route/fewest.h"
#include "core/decide/route/offers.h"

namespace wm {

/// A record on a route, `count` times the same.
struct PlannedStep {
  Instant at;
  NeedKind kind = NeedKind::document;  // document, lesson, quiz or checkout; practice: a session
  bool use = false;                    // a use
  NameId name = no_name;               // the paper, item or target
  NameId witness = no_name;            // of check-outs and sessions
  int revision = 0;
  int minutes = 0;  // of sessions
  std::int64_t count = 1;
};

struct Plan {
  std::vector<PlannedStep> steps;
  bool fewest = false;  // proved so
};

class Planner {
 public:
  /// `chances` are the instants at which a step may be taken, none after `to`; `asked` and `targets` all that
  /// may be asked on the way, what a standing rests on mostly after it.
  Planner(Standings& standings, Offers& offers, NameId person, Instant from, std::vector<Instant> chances,
          const std::vector<Asked>& asked, const std::vector<NameId>& targets);

  /// The fewest steps that give at least `rung` on x at `to`; there must be some that do.
  Plan plan(NameId x, Rung rung, Instant to, double seconds);

 private:
  using Goal = Covering::Goal;
  using Pick = Covering::Pick;
  struct StepKey {
    NeedKind kind;
    bool use;
    NameId name;
    Instant at;
    NameId witness;
    auto operator<=>(const StepKey&) const = default;
  };
  using StandingKey = std::tuple<NameId, Rung, Instant>;
  /// Sessions that must come to so many minutes.
  struct Minutes {
    Goal goal;
    std::vector<Pick> sessions;
    std::int64_t missing;
  };

  Goal standing(NameId x, Rung rung, Instant t);
  Goal on_target(const BookTarget& target, Rung rung, Instant t);
  Goal gate(const BookGate& gate, NameId x, Instant t);
  Goal need(const Need& need, NameId x, Instant t);
  Goal all_needs(const std::vector<Need>& needs, NameId x, Instant t);
  Goal tier(const Need& need, Instant t);
  Goal one_of_kind(const Asked& asked, Instant t);
  Goal checkout(const Asked& asked, Instant t);
  Goal adds_up(const Asked& asked, Instant t);

  /// The pick for a step, at most `most` of it.
  Pick step(StepKey key, std::int64_t most, Goal given = Covering::always);
  std::vector<NameId> worth_asking(NameId checkout, Instant at);
  bool covers_at(const Asked& asked, Instant step, Instant t) const {
    return offers_.cover(asked, step).span(false).covers(t);
  }
  std::int64_t most_of(NameId target) const;
  std::vector<int> minutes_of(const Covering::Answer& answer) const;

  Standings& standings_;
  Offers& offers_;
  NameId person_;
  Instant from_, to_;
  std::vector<Instant> chances_;
  const std::vector<Asked>& asked_;
  const std::vector<NameId>& targets_;
  Covering covering_;
  std::map<StepKey, Pick> steps_;
  std::vector<StepKey> keys_;  // by pick
  std::map<StandingKey, Goal> standings_asked_;
  std::map<std::pair<Asked, Instant>, Goal> asked_goals_;
  std::map<std::pair<NameId, Instant>, std::vector<NameId>> worth_asking_;
  std::vector<Minutes> minutes_;
};

}  // namespace wm
