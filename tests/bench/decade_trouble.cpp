// What goes wrong in the invented shop, and repairs.
#include "decade.h"

#include <algorithm>

namespace wm::bench {

void Decade::nightly(Day day) {
  const int share = world_.size.people;  // of 5,000: how much of W's daily events
  const auto happens = [&](int per_mille) {
    return dice_.below(1000LL * 5000) < per_mille * static_cast<std::int64_t>(share);
  };
  if (happens(800)) incident(day);
  if (happens(160)) suspend(day);
  if (happens(900)) lock_out(day);
  if (dice_.below(1000) < 25) change(day);
  for (int t = 0; t < static_cast<int>(world_.targets.size()); ++t) {
    if (day > founding_ends && (day.number - first_day.number) % 360 == 5 * t + 2) train(t, day);
  }
  plan(day + 1, Event::nightly);
}

void Decade::incident(Day day) {
  const int target = dice_.below(static_cast<std::int64_t>(world_.targets.size()));
  const int p = some_user(target, day, -1);
  if (p < 0) return;
  const int roll = dice_.below(100);
  const int severity = roll < 3 ? 1 : roll < 12 ? 2 : roll < 45 ? 3 : 4;
  const Part part = dice_.percent(80) ? Part::operating : dice_.percent(50) ? Part::hurt : Part::saw;
  add(day, Incident{id(p), target_at(target).name, severity, part}, open_day(day).number % 7 == 2 ? 17 : 21);
  if (severity <= 2 && part == Part::operating) {
    for (int t = 0; t < static_cast<int>(world_.targets.size()); ++t) {
      Day& lost = life(p).checked_out[static_cast<std::size_t>(t)];
      if (target_at(t).machine_class != target_at(target).machine_class || lost == no_day) continue;
      lost = no_day;
      plan(day + dice_.from(1, life(p).assessor ? 5 : 60), Event::checkout, p, t);
    }
  }
}

void Decade::suspend(Day day) {
  const int p = dice_.below(world_.size.people);
  if (life(p).joins >= day || life(p).leaves <= day || life(p).assessor) return;
  const int roll = dice_.below(3);
  const Scope scope = roll == 0   ? Scope{Everything{}}
                      : roll == 1 ? Scope{TierScope{dice_.from(1, 4)}}
                                  : Scope{TargetScope{dice_.one_of(world_.targets).machine_class}};
  const bool dated = dice_.percent(60);
  const RecordId record =
      add(day, Suspend{id(p), scope, dated ? std::optional(day + dice_.from(7, 120)) : std::nullopt});
  const Day back = day + dice_.from(3, 90);
  if ((!dated || dice_.percent(20)) && back <= last_day) add(back, Reinstate{record});
}

void Decade::lock_out(Day day) {
  if (world_.shop.machines.empty()) return;
  const RecordId record = add(day, Lockout{dice_.one_of(world_.shop.machines).id});
  const Day off = day + dice_.from(1, 12);
  if (dice_.percent(97) && off <= last_day) add(off, Release{record});
}

void Decade::change(Day day) {
  const int target = dice_.below(static_cast<std::int64_t>(world_.targets.size()));
  add(day, Change{target_at(target).name}, before_opening);
  if (target_at(target).column % 3 != 0) return;
  for (const int p : users_[static_cast<std::size_t>(target)]) {
    life(p).checked_out[static_cast<std::size_t>(target)] = no_day;
  }
  train(target, day);
  check_out_anew(target, day, 60);
}

void Decade::train(int target, Day day) {
  const auto& experts = experts_[static_cast<std::size_t>(target)];
  for (int tries = 0; tries < 30 && !experts.empty(); ++tries) {
    const int trainer = dice_.one_of(experts);
    if (life(trainer).leaves <= day + 60) continue;
    add(day, Appoint{id(trainer), TargetScope{target_at(target).name}, true, day + 60}, before_opening);
    trainers_[target] = {trainer, day + 50};
    for (const int p : experts) {
      if (p != trainer && life(p).leaves > day) plan(day + dice_.from(1, 10), Event::checkout, p, target, 1);
    }
    return plan(day + dice_.from(12, 25), Event::checkout, trainer, target, 1);
  }
}

}  // namespace wm::bench
