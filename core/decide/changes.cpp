#include "core/decide/changes.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/time/times.h"

namespace wm {

namespace {

std::vector<StandingChange> differing(Decider& before, Decider& after, const std::set<TargetName>& targets,
                                      Instant at) {
  std::vector<StandingChange> found;
  for (const PersonId& person : before.people()) {
    for (const TargetName& target : targets) {
      const StandingChange change{person, target, before.rung(person, target, at),
                                  after.rung(person, target, at)};
      if (change.before != change.after) found.push_back(change);
    }
  }
  return found;
}

std::set<TargetName> targets_in_force(const Decider& decider, Instant at) {
  const Rulebook* book = decider.in_force(at);
  if (book == nullptr) return {};
  const std::vector<TargetName> targets = targets_of(*book);
  return {targets.begin(), targets.end()};
}

}  // namespace

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

std::vector<StandingChange> rests_on(const Shop& shop, std::optional<Instant> known, std::string_view record,
                                     Instant at) {
  Shop without = shop;
  std::erase_if(without.records, [&](const Record& each) { return each.id == record; });
  Decider before(shop, known), after(without, known);
  return differing(before, after, targets_in_force(before, at), at);
}

std::vector<StandingChange> what_if(const Shop& shop, std::optional<Instant> known, const Rulebook& rulebook,
                                    Instant at) {
  Shop other = shop;
  std::erase_if(other.rulebooks, [&](const Rulebook& each) { return each.effective_from >= at; });
  Rulebook supposed = rulebook;
  supposed.effective_from = at;
  supposed.recorded = beginning;  // known whatever `known` says
  other.rulebooks.push_back(std::move(supposed));
  Decider before(shop, known), after(other, known);
  std::set<TargetName> targets = targets_in_force(before, at);
  targets.merge(targets_in_force(after, at));
  return differing(before, after, targets, at);
}

}  // namespace wm
