#pragma once
// What one person could enter at an instant to get ahead: which records would count then, and who could
// witness them. Everything here is as it is without any of them: what a route does to other people's
// standings is not counted on.
#include <map>
#include <vector>

#include "core/decide/engine.h"

namespace wm {

/// A requirement of a leaf kind with the target that it is asked for. It is its gate's own, so it lives as
/// long as the rulebook.
struct Asked {
  const Need* need = nullptr;
  NameId x = no_name;
  /// For practice and recent_use: the target that they look at.
  NameId recorded_on() const { return need->target == no_name ? x : need->target; }
  auto operator<=>(const Asked&) const = default;
};

class Offers {
 public:
  Offers(Standings& standings, NameId person) : standings_(standings), person_(person) {}

  /// How long a record made at `at` would cover what is asked, were it to count.
  Cover cover(const Asked& asked, Instant at) const {
    return supposed_cover(standings_.known(), *asked.need, person_, asked.x, at);
  }
  bool quiz_counts(const Need& need, Instant at) const {
    return attempt_would_count(standings_.known(), need, person_, at);
  }
  /// Who else is able to assess x one second before, in order of id.
  const std::vector<NameId>& assessors(NameId x, Instant at);
  /// Who else is able to supervise it one second before: the first in order of id, of those who could assess
  /// it too if there are any; no_name: nobody.
  NameId supervisor(NameId x, Instant at);
  /// Every instant after `from` at which who is able to assess x may change; in no order.
  std::vector<Instant> assessor_moments(NameId x, Instant from);
  /// Every instant after `from` at which it changes whether anybody is able to supervise x; in order.
  std::vector<Instant> supervisor_moments(NameId x, Instant from);

 private:
  using Key = std::pair<NameId, Instant>;

  Standings& standings_;
  NameId person_;
  std::map<Key, std::vector<NameId>> assessors_;
  std::map<Key, NameId> supervisors_;
};

/// The targets on which a session or a use could be recorded so as to count for practice or recent_use: the
/// one it looks at, and its class.
std::vector<NameId> recordable_for(const Known& known, const Asked& asked);

}  // namespace wm
