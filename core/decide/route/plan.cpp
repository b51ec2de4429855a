#include "core/decide/route/plan.h"

#include <algorithm>

namespace wm {

namespace {

/// The longest session that a record can hold.
constexpr std::int64_t most_minutes = 1440;

std::int64_t sessions_for(std::int64_t minutes) { return (minutes + most_minutes - 1) / most_minutes; }

}  // namespace

Planner::Planner(Standings& standings, Offers& offers, NameId person, Instant from,
                 std::vector<Instant> chances, const std::vector<Asked>& asked,
                 const std::vector<NameId>& targets)
    : standings_(standings),
      offers_(offers),
      person_(person),
      from_(from),
      to_(from),
      chances_(std::move(chances)),
      asked_(asked),
      targets_(targets) {}

Plan Planner::plan(NameId x, Rung rung, Instant to, double seconds) {
  to_ = to;
  // From the last to the first, so that a chain of any length does not use up the stack.
  for (auto target = targets_.rbegin(); target != targets_.rend(); ++target)
    for (const Rung each : {Rung::supervised, Rung::independent}) standing(*target, each, to);
  const Goal goal = standing(x, rung, to);
  const Covering::Answer answer = covering_.fewest(goal, seconds);
  const std::vector<int> minutes = minutes_of(answer);
  Plan plan;
  plan.fewest = answer.fewest;
  for (std::size_t pick = 0; pick < keys_.size(); ++pick) {
    if (answer.taken[pick] == 0) continue;
    const StepKey& key = keys_[pick];
    PlannedStep step{key.at, key.kind, key.use, key.name, key.witness, 0, minutes[pick], answer.taken[pick]};
    Need item;
    item.item = key.name;
    step.revision = revision_published(standings_.known(), item, key.at);
    plan.steps.push_back(step);
  }
  return plan;
}

/// The least that each session must last, shared evenly among those that count together.
std::vector<int> Planner::minutes_of(const Covering::Answer& answer) const {
  std::vector<int> minutes(keys_.size(), 1);
  const std::vector<bool> holding = covering_.all_holding(answer.taken);
  for (const Minutes& asked : minutes_) {
    if (!holding[static_cast<std::size_t>(asked.goal)]) continue;
    std::int64_t sessions = 0;
    for (const Pick pick : asked.sessions) sessions += answer.taken[static_cast<std::size_t>(pick)];
    if (sessions == 0) continue;
    const auto each = static_cast<int>((asked.missing + sessions - 1) / sessions);
    for (const Pick pick : asked.sessions) {
      int& least = minutes[static_cast<std::size_t>(pick)];
      least = std::max(least, each);
    }
  }
  return minutes;
}

Planner::Pick Planner::step(StepKey key, std::int64_t most, Goal given) {
  const auto [place, fresh] = steps_.try_emplace(key, 0);
  if (!fresh) return place->second;
  // Sooner is better, and what was done on one mode says more than on the machine as a whole.
  const auto rank = std::lower_bound(chances_.begin(), chances_.end(), key.at) - chances_.begin();
  double dislike = 0.9 * static_cast<double>(rank) / static_cast<double>(chances_.size());
  const bool whole_class =
      key.kind == NeedKind::practice && standings_.known().class_of(key.name) == key.name;
  if (whole_class) dislike += 0.05;
  place->second = covering_.pick(most, given, dislike);
  keys_.push_back(key);
  return place->second;
}

// --- standings -----------------------------------------------------------------------------------------

Planner::Goal Planner::standing(NameId x, Rung rung, Instant t) {
  if (standings_.rung(person_, x, t) >= rung) return Covering::always;
  if (t < from_) return Covering::never;
  const StandingKey key{x, rung, t};
  const auto found = standings_asked_.find(key);
  if (found != standings_asked_.end()) return found->second;
  Goal goal = Covering::never;
  if (const Book* book = standings_.book_at(t)) {
    const std::vector<NameId> targets = book->stands_for(x, standings_.known());
    std::vector<Goal> each;
    for (const NameId target : targets) each.push_back(on_target(*book->find(target), rung, t));
    if (!each.empty()) goal = covering_.all(std::move(each));
  }
  return standings_asked_[key] = goal;
}

Planner::Goal Planner::on_target(const BookTarget& target, Rung rung, Instant t) {
  if (standings_.suspended(person_, target.target, t, standings_.book_at(t))) return Covering::never;
  std::vector<Goal> gates;
  for (const BookGate* each : target.gates)
    if (each->gate->guards <= rung) gates.push_back(gate(*each, target.target, t));
  return covering_.all(std::move(gates));
}

Planner::Goal Planner::gate(const BookGate& gate, NameId x, Instant t) {
  const Goal met = need(gate.need, x, t);
  if (met == Covering::always || t >= gate.spared_until) return met;
  return covering_.some(1, {met, standing(x, gate.gate->guards, gate.spared_by)});
}

Planner::Goal Planner::all_needs(const std::vector<Need>& needs, NameId x, Instant t) {
  std::vector<Goal> goals;
  for (const Need& each : needs) goals.push_back(need(each, x, t));
  return covering_.all(std::move(goals));
}

Planner::Goal Planner::tier(const Need& need, Instant t) {
  const Book* book = standings_.book_at(t);
  if (book == nullptr) return Covering::never;
  const auto tier = book->tiers.find(need.tier);
  if (tier == book->tiers.end()) return Covering::never;
  std::vector<Goal> each;
  for (const NameId target : tier->second) each.push_back(standing(target, need.at_least, t));
  return covering_.some(need.all ? static_cast<std::int64_t>(each.size()) : need.count, each);
}

// --- requirements --------------------------------------------------------------------------------------

Planner::Goal Planner::need(const Need& need, NameId x, Instant t) {
  if (standings_.holds(need, person_, x, t)) return Covering::always;
  if (t < from_) return Covering::never;
  switch (need.kind) {
    case NeedKind::group: {
      std::vector<Goal> parts;
      for (const Need& part : need.of) parts.push_back(this->need(part, x, t));
      return covering_.some(need.count, parts);
    }
    case NeedKind::standing:
      return standing(need.target, need.at_least, t);
    case NeedKind::tier_standing:
      return tier(need, t);
    case NeedKind::age:
      return Covering::never;
    default:
      break;
  }
  const Asked asked{&need, x};
  const auto found = asked_goals_.find({asked, t});
  if (found != asked_goals_.end()) return found->second;
  const Goal goal = need.kind == NeedKind::checkout ? checkout(asked, t)
                    : need.kind == NeedKind::practice || need.kind == NeedKind::recent_use
                        ? adds_up(asked, t)
                        : one_of_kind(asked, t);
  return asked_goals_[{asked, t}] = goal;
}

/// A paper, a lesson or an attempt.
Planner::Goal Planner::one_of_kind(const Asked& asked, Instant t) {
  const Need& need = *asked.need;
  std::vector<Covering::Part<Pick>> picks;
  for (const Instant at : chances_) {
    if (at > t || !covers_at(asked, at, t)) continue;
    if (need.kind == NeedKind::quiz && !offers_.quiz_counts(need, at)) continue;
    picks.push_back({step({need.kind, false, need.item, at, no_name}, 1)});
  }
  return covering_.enough(std::move(picks), {}, 1);
}

/// Whom to ask for a check-out at that instant: nobody who can't assess more of what it may serve for than
/// another can.
std::vector<NameId> Planner::worth_asking(NameId checkout, Instant at) {
  const auto [place, fresh] = worth_asking_.try_emplace({checkout, at});
  std::vector<NameId>& worth = place->second;
  if (!fresh) return worth;
  std::set<NameId> targets;
  for (const Asked& asked : asked_)
    if (asked.need->kind == NeedKind::checkout && asked.need->item == checkout) targets.insert(asked.x);
  std::map<NameId, std::vector<NameId>> can;  // by assessor: the targets, in order
  for (const NameId x : targets)
    for (const NameId assessor : offers_.assessors(x, at)) can[assessor].push_back(x);
  for (const NameId assessor : standings_.known().people()) {
    const auto own = can.find(assessor);
    if (own == can.end()) continue;
    const bool another = std::any_of(can.begin(), can.end(), [&](const auto& other) {
      const bool takes_in =
          std::includes(other.second.begin(), other.second.end(), own->second.begin(), own->second.end());
      const bool chosen = std::find(worth.begin(), worth.end(), other.first) != worth.end();
      return takes_in && (other.second.size() > own->second.size() || chosen);
    });
    if (!another) worth.push_back(assessor);
  }
  return worth;
}

Planner::Goal Planner::checkout(const Asked& asked, Instant t) {
  const Need& need = *asked.need;
  std::vector<Goal> ways;
  std::vector<Covering::Part<Pick>> free;
  for (const Instant at : chances_) {
    if (at > t || !covers_at(asked, at, t)) continue;
    const auto& able = offers_.assessors(asked.x, at);
    if (able.empty()) continue;
    const Goal given = all_needs(need.given, asked.x, at);
    if (given == Covering::never) continue;
    std::vector<Covering::Part<Pick>> picks;
    for (const NameId assessor : worth_asking(need.item, at)) {
      if (std::find(able.begin(), able.end(), assessor) == able.end()) continue;
      picks.push_back({step({NeedKind::checkout, false, need.item, at, assessor}, 1)});
    }
    if (given == Covering::always) {
      free.insert(free.end(), picks.begin(), picks.end());
    } else {
      ways.push_back(covering_.all({given, covering_.enough(std::move(picks), {}, 1)}));
    }
  }
  // A check-out that is there already, and lacks what should have been given.
  for (const Cover& cover : covers(standings_.known(), need, person_, asked.x, t)) {
    if (cover.from < from_ || !cover.span(false).covers(t) || need.given.empty()) continue;
    if (cover.witness == person_ || !standings_.able_to_assess(cover.witness, asked.x, cover.from - 1))
      continue;
    ways.push_back(all_needs(need.given, asked.x, cover.from));
  }
  std::vector<Covering::Part<Goal>> parts;
  for (const Goal way : ways) parts.push_back({way});
  return covering_.enough(std::move(free), std::move(parts), 1);
}

/// As many as any rule asks for of what is recorded on the target.
std::int64_t Planner::most_of(NameId target) const {
  std::int64_t most = 1;
  for (const Asked& asked : asked_) {
    const Need& need = *asked.need;
    if (need.kind != NeedKind::practice && need.kind != NeedKind::recent_use) continue;
    if (!standings_.known().is_on(target, asked.recorded_on())) continue;
    most = std::max({most, std::int64_t{need.count}, sessions_for(need.minutes)});
  }
  return most;
}

Planner::Goal Planner::adds_up(const Asked& asked, Instant t) {
  const Need& need = *asked.need;
  std::vector<Covering::Part<Pick>> sessions, all;
  for (const NameId target : recordable_for(standings_.known(), asked)) {
    const std::int64_t most = most_of(target);
    for (const Instant at : chances_) {
      if (at > t || !covers_at(asked, at, t)) continue;
      const NameId supervisor = offers_.supervisor(target, at);
      if (supervisor != no_name) {
        sessions.push_back({step({NeedKind::practice, false, target, at, supervisor}, most)});
        all.push_back(sessions.back());
      }
      if (need.kind != NeedKind::recent_use) continue;
      const Goal permitted = standing(target, Rung::independent, at - 1);
      if (permitted != Covering::never)
        all.push_back({step({NeedKind::recent_use, true, target, at, no_name}, most, permitted)});
    }
  }
  std::int64_t count = 0, minutes = 0;
  std::vector<Covering::Part<Goal>> own_uses;  // that are there already, and would be permitted
  for (const Cover& cover : covers(standings_.known(), need, person_, asked.x, t)) {
    if (!cover.span(false).covers(t)) continue;
    if (standings_.counts(cover, need, person_, asked.x)) {
      ++count;
      minutes += cover.minutes;
    } else if (cover.counts == Cover::Counts::use) {
      own_uses.push_back({standing(cover.target, Rung::independent, cover.from - 1)});
    }
  }
  const Goal often = covering_.enough(std::move(all), std::move(own_uses), need.count - count);
  std::vector<Pick> picks;
  for (auto& part : sessions) {
    picks.push_back(part.of);
    part.weight = most_minutes;
  }
  const std::int64_t missing = need.minutes - minutes;
  const Goal long_enough = covering_.enough(std::move(sessions), {}, missing);
  if (missing > 0) minutes_.push_back({long_enough, std::move(picks), missing});
  return covering_.all({often, long_enough});
}

}  // namespace wm
