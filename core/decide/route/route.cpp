#include "core/decide/route/route.h"

#include <algorithm>
#include <cstdio>
#include <set>
#include <tuple>

#include "core/decide/route/ahead.h"
#include "core/decide/route/plan.h"

namespace wm {

namespace {

/// Past this many instants at which a step may be taken, the fewest are no longer looked for among all.
constexpr std::size_t most_chances = 500;
constexpr double most_seconds = 1.0;

/// The instants at which it may be best to take a step. Moved as late as it still serves, a step is taken at
/// the goal itself, when a later step or a spared gate rests on it, just before something ends (a witness's
/// ability, a paper that a check-out rests on, what an earlier step covers), or a second after an earlier one
/// made it possible.
std::vector<Instant> chances(const Ahead& ahead, const Offers& offers, Instant from, Instant to,
                             bool& complete) {
  struct Chance {
    Instant at;
    std::size_t seconds_on = 0;  // how many uses one after another it may follow
  };
  std::vector<Chance> found;
  std::set<Instant> taken;
  const auto take = [&](Instant t, std::size_t seconds_on = 0) {
    if (from <= t && t <= to && taken.insert(t).second) found.push_back({t, seconds_on});
  };
  take(from);
  take(to);
  for (const Instant t : ahead.last_chances()) take(t);
  complete = true;
  if (ahead.order_matters()) {
    for (const Instant t : ahead.moments()) {
      take(t - 1);
      take(t);
    }
    // The list grows while it is gone through.
    for (std::size_t i = 0; i < found.size() && found.size() < most_chances; ++i) {
      const Chance chance = found[i];
      if (chance.seconds_on < ahead.use_targets()) take(chance.at + 1, chance.seconds_on + 1);
      for (const Asked& asked : ahead.asked_on_the_way()) take(offers.cover(asked, chance.at).to - 1);
    }
    complete = found.size() < most_chances;
  }
  return {taken.begin(), taken.end()};
}

/// The order of kinds on a route.
int order(const PlannedStep& step) {
  if (step.use) return 4;
  switch (step.kind) {
    case NeedKind::document:
      return 0;
    case NeedKind::lesson:
      return 1;
    case NeedKind::quiz:
      return 2;
    case NeedKind::checkout:
      return 5;
    default:
      return 3;
  }
}

Fact fact(const PlannedStep& step, const PersonId& person, const NameTable& names) {
  const std::string& name = names.text(step.name);
  const auto witness = [&] { return names.text(step.witness); };
  switch (order(step)) {
    case 0:
      return Document{person, name, {}};
    case 1:
      return Lesson{person, name, step.revision};
    case 2:
      return Quiz{person, name, step.revision, 1, 1, 0};
    case 3:
      return Supervised{person, name, step.minutes, witness()};
    case 4:
      return Use{person, name};
    default:
      return Checkout{person, name, step.revision, Outcome::passed, witness()};
  }
}

std::vector<Record> records(std::vector<PlannedStep> steps, const PersonId& person, const NameTable& names) {
  std::sort(steps.begin(), steps.end(), [&](const PlannedStep& a, const PlannedStep& b) {
    return std::tuple(a.at, order(a), names.text(a.name)) < std::tuple(b.at, order(b), names.text(b.name));
  });
  std::vector<Record> records;
  for (const PlannedStep& step : steps) {
    for (std::int64_t i = 0; i < step.count; ++i) {
      char id[32];
      std::snprintf(id, sizeof id, "step-%02zu", records.size() + 1);
      records.push_back({id, step.at, step.at, std::nullopt, fact(step, person, names)});
    }
  }
  return records;
}

}  // namespace

Route route(Standings& standings, NameId person, NameId x, Rung to, Instant from) {
  Route route;
  if (standings.rung(person, x, from) >= to) {
    route.reaches = from;
    return route;
  }
  Offers offers(standings, person);
  Ahead ahead(standings, offers, person, x, to, from);
  route.reaches = ahead.reaches();
  if (!route.reaches) return route;
  bool complete = true;
  Planner planner(standings, offers, person, from, chances(ahead, offers, from, *route.reaches, complete),
                  ahead.asked(), ahead.targets());
  Plan plan = planner.plan(x, to, *route.reaches, most_seconds);
  // One step is the fewest there can be, since without any it is not reached.
  route.shortest = (plan.fewest && complete) || plan.steps.empty() ||
                   (plan.steps.size() == 1 && plan.steps.front().count == 1);
  const NameTable& names = standings.known().names();
  route.steps = records(std::move(plan.steps), names.text(person), names);
  return route;
}

}  // namespace wm
