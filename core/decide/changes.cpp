#include "core/decide/changes.h"

#include <algorithm>
#include <tuple>

namespace wm {

std::vector<Drop> drops(Decider& decider, Instant from, Instant to) {
  std::vector<Drop> found;
  for (const PersonId& person : decider.people()) {
    for (const TargetName& target : decider.targets()) {
      const Steps<Rung>& steps = decider.standing_steps(person, target);
      Rung before = steps.first();
      for (const auto& [at, after] : steps.changes()) {
        if (from < at && at <= to && after < before) found.push_back({at, person, target, before, after});
        before = after;
      }
    }
  }
  std::sort(found.begin(), found.end(), [](const Drop& a, const Drop& b) {
    return std::tie(a.at, a.person, a.target) < std::tie(b.at, b.person, b.target);
  });
  return found;
}

}  // namespace wm
