#pragma once
// The earliest instant at which a person could have a standing, were they to enter at every instant whatever
// counts then.
//
// More never hurts: none of a route's records takes anything away. And of the records of a kind the latest
// covers longest. So it is enough to go forward in time from one instant at which something may change to the
// next, and to remember for each kind of record the last instant at which one would have counted.
#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/decide/route/gathered.h"

namespace wm {

class Ahead {
 public:
  Ahead(Standings& standings, Offers& offers, NameId person, NameId x, Rung rung, Instant from);

  /// Nothing where it never comes to that.
  std::optional<Instant> reaches();

  /// What may matter to the standing from then on, in whatever rulebook; in a stable order.
  const std::vector<Asked>& asked() const { return all_.asked(); }
  const std::vector<NameId>& targets() const { return all_.targets(); }
  /// Those of it on which a step before the last instant may rest: what must be given for a check-out, what
  /// makes a use permitted, what spares from a gate.
  const std::vector<Asked>& asked_on_the_way() const { return on_the_way_.asked(); }
  /// On how many targets a use could be recorded.
  std::size_t use_targets() const { return uses_.size(); }
  /// The instants looked at by `reaches`, in order.
  const std::vector<Instant>& moments() const { return looked_at_; }
  /// The last instant, of those looked at, at which a record of each kind would have counted.
  std::vector<Instant> last_chances() const;
  /// Whether there is any of that: then when a step is taken matters.
  bool order_matters() const { return order_matters_; }

 private:
  /// Whether a record of a kind would count now, and when one last would have.
  struct Chance {
    bool now = false;
    std::optional<Instant> last;
  };
  /// A cover that exists; where whether it counts rests on the route, that is found out when time gets there.
  struct OwnCover {
    Cover cover;
    bool open = false;
    bool counts = false;
  };
  void collect();
  void collect_own_covers(const Asked& asked);

  void look_at(Instant t);
  void look_at_targets();
  std::optional<Instant> next_after(Instant t);
  const std::vector<Instant>& fixed_moments();

  bool at_least(NameId x, Rung rung);
  bool target_at_least(const BookTarget& target, Rung rung);
  bool gate_holds(const BookGate& gate, NameId x);
  bool need_holds(const Need& need, NameId x);
  bool leaf_holds(const Asked& asked);
  bool adds_up(const Asked& asked);
  bool own_cover(const Asked& asked) const;
  void see_whether_checkout_counts(const Asked& asked);
  bool covered_by(const Chance& chance, const Asked& asked) const;

  Standings& standings_;
  Offers& offers_;
  NameId person_, x_;
  Rung rung_;
  Instant from_, now_;

  Gathered all_, on_the_way_;
  std::map<Asked, std::vector<OwnCover>> own_;
  std::map<Asked, Chance> quizzes_, checkouts_;
  std::map<NameId, Chance> sessions_, uses_;
  std::map<NameId, bool> independent_;  // at the instant looked at last
  std::map<Spared, bool> spared_;
  std::set<Asked> checkouts_done_;                // at the instant looked at
  std::map<std::pair<NameId, Rung>, bool> held_;  // the same: which target's rungs are held
  std::optional<std::vector<Instant>> fixed_moments_;
  std::vector<Instant> looked_at_;
  bool order_matters_ = false;
};

}  // namespace wm
