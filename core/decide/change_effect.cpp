#include "core/decide/change_effect.h"

#include <set>

#include "core/rulebook/checkouts.h"

namespace wm {

ChangeEffect effect_of_change(Current& shop, const TargetName& target, Instant at,
                              std::optional<Instant> still) {
  ChangeEffect effect;
  if (const Rulebook* rulebook = shop.decider().in_force(at))
    effect.checkouts = renewed_after_change(*rulebook, target);
  effect.shifts = shop.if_taken({"step-change", at, at, std::nullopt, Change{target}});
  if (still)
    std::erase_if(effect.shifts, [&](const Shift& shift) { return shift.until && *shift.until <= *still; });
  std::set<PersonId> people;
  for (const Shift& shift : effect.shifts) people.insert(shift.person);
  effect.people = people.size();
  return effect;
}

}  // namespace wm
