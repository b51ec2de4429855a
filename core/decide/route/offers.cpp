#include "core/decide/route/offers.h"

#include <algorithm>

namespace wm {

const std::vector<NameId>& Offers::assessors(NameId x, Instant at) {
  const auto [place, fresh] = assessors_.try_emplace({x, at});
  if (!fresh) return place->second;
  for (const NameId other : standings_.known().people()) {
    if (other == person_ || standings_.known().facts(other).appointments.empty()) continue;
    if (standings_.able_to_assess(other, x, at - 1)) place->second.push_back(other);
  }
  return place->second;
}

NameId Offers::supervisor(NameId x, Instant at) {
  const auto [place, fresh] = supervisors_.try_emplace({x, at}, no_name);
  if (!fresh) return place->second;
  const auto& able = assessors(x, at);
  if (!able.empty()) return place->second = able.front();
  for (const NameId other : standings_.known().people()) {
    if (other == person_ || !standings_.able_to_supervise(other, x, at - 1)) continue;
    place->second = other;
    break;
  }
  return place->second;
}

std::vector<Instant> Offers::assessor_moments(NameId x, Instant from) {
  std::vector<Instant> moments;
  for (const NameId other : standings_.known().people()) {
    if (other == person_ || standings_.known().facts(other).appointments.empty()) continue;
    for (const Instant t : standings_.able_moments(other, x))
      if (t + 1 > from) moments.push_back(t + 1);
  }
  return moments;
}

std::vector<Instant> Offers::supervisor_moments(NameId x, Instant from) {
  std::vector<Times> able;
  for (const NameId other : standings_.known().people()) {
    if (other == person_) continue;
    std::vector<Instant> moments = standings_.able_moments(other, x);
    std::sort(moments.begin(), moments.end());
    Times steps(standings_.able_to_supervise(other, x, from - 1));
    for (const Instant t : moments)
      if (t >= from && t <= last_instant) steps.set_from(t, standings_.able_to_supervise(other, x, t));
    if (steps.first() || !steps.flips().empty()) able.push_back(std::move(steps));
  }
  std::vector<Instant> moments;
  const Times anybody = at_least(1, able);
  for (const Instant flip : anybody.flips()) moments.push_back(flip + 1);
  return moments;
}

std::vector<NameId> recordable_for(const Known& known, const Asked& asked) {
  const NameId target = asked.recorded_on();
  const NameId machine_class = known.class_of(target);
  return machine_class == target || machine_class == no_name ? std::vector{target}
                                                             : std::vector{target, machine_class};
}

}  // namespace wm
