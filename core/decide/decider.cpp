#include "core/decide/decider.h"

#include <algorithm>
#include <set>

#include "core/decide/engine.h"
#include "core/decide/last_checkouts.h"
#include "core/decide/route/route.h"
#include "core/decide/standing_answer.h"

namespace wm {

struct Decider::Engine {
  Engine(const Shop& shop, std::optional<Instant> known)
      : own(std::make_unique<Standings>(shop, known)), standings(*own) {}
  explicit Engine(Standings& kept) : standings(kept) {}

  NameId person(std::string_view id) { return standings.known().names().add(id); }
  NameId target(std::string_view name) { return standings.known().add_target(name); }

  std::unique_ptr<Standings> own;
  Standings& standings;
};

Decider::Decider(const Shop& shop, std::optional<Instant> known)
    : engine_(std::make_unique<Engine>(shop, known)) {}
Decider::Decider(Standings& standings) : engine_(std::make_unique<Engine>(standings)) {}
Decider::~Decider() = default;
Decider::Decider(Decider&&) noexcept = default;
Decider& Decider::operator=(Decider&&) noexcept = default;

namespace {

bool met(const Condition& condition, Standings& standings, NameId x, Instant t, bool staffed,
         const std::vector<NameId>& others) {
  if (std::holds_alternative<Staffed>(condition)) return staffed;
  const Buddy& buddy = std::get<Buddy>(condition);
  const auto fit = std::count_if(others.begin(), others.end(),
                                 [&](NameId other) { return standings.rung(other, x, t) >= buddy.at_least; });
  return fit >= buddy.count;
}

Hindrance hindrance(const Condition& condition) {
  return std::holds_alternative<Staffed>(condition) ? Hindrance::staffed : Hindrance::buddy;
}

/// The conditions of a class and of its tier in a book.
std::vector<Condition> conditions_of(const Book* book, NameId machine_class) {
  std::vector<Condition> conditions;
  if (book == nullptr) return conditions;
  const auto found = book->classes.find(machine_class);
  if (found == book->classes.end()) return conditions;
  if (const Tier* tier = find_tier(*book->rulebook, found->second->tier)) conditions = tier->conditions;
  conditions.insert(conditions.end(), found->second->conditions.begin(), found->second->conditions.end());
  return conditions;
}

}  // namespace

StandingAnswer Decider::standing(std::string_view person, std::string_view target, Instant at) {
  Standings& standings = engine_->standings;
  const NameId p = engine_->person(person), x = engine_->target(target);
  return standing_answer(standings, standings.steps(p, x), p, x, at);
}

Rung Decider::rung(std::string_view person, std::string_view target, Instant at) {
  return engine_->standings.rung(engine_->person(person), engine_->target(target), at);
}

const Steps<Rung>& Decider::standing_steps(std::string_view person, std::string_view target) {
  return engine_->standings.steps(engine_->person(person), engine_->target(target));
}

std::vector<TimelineStep> Decider::timeline(std::string_view person, std::string_view target, Instant from,
                                            Instant to) {
  const Steps<Rung>& steps = standing_steps(person, target);
  std::vector<TimelineStep> timeline{{from, steps.at(from)}};
  for (const auto& change : steps.changes()) {
    if (from < change.at && change.at <= to) timeline.push_back({change.at, change.value});
  }
  return timeline;
}

MayStart Decider::may_start(std::string_view person, std::string_view machine, std::string_view mode,
                            Instant at, bool staffed, std::span<const PersonId> present,
                            std::span<const PersonId> busy) {
  Standings& standings = engine_->standings;
  Known& known = standings.known();
  const NameId p = engine_->person(person), unit = engine_->person(machine);
  const NameId machine_class = known.machine_class(unit);
  MayStart answer;
  std::set<Hindrance> because;
  if (machine_class == no_name) {
    answer.because = {Hindrance::barred};
    return answer;
  }
  const std::string class_name = known.names().text(machine_class);
  const NameId x = mode.empty() ? machine_class : engine_->target(class_name + "/" + std::string(mode));

  std::set<PersonId> others(present.begin(), present.end());
  others.erase(PersonId(person));
  std::vector<NameId> other_ids;
  for (const PersonId& other : others) {
    const NameId id = engine_->person(other);
    other_ids.push_back(id);
    const bool is_busy = std::find(busy.begin(), busy.end(), other) != busy.end();
    if (!is_busy && standings.able_to_supervise(id, x, at)) answer.can_supervise.push_back(other);
  }
  for (const KnownLockout& lockout : known.lockouts(unit)) {
    if (lockout.span.covers(at)) answer.lockouts.push_back(known.record_id(lockout.no));
  }
  if (!answer.lockouts.empty()) because.insert(Hindrance::locked_out);
  answer.conditions = conditions_of(standings.book_at(at), machine_class);
  for (const Condition& condition : answer.conditions) {
    if (!met(condition, standings, x, at, staffed, other_ids)) because.insert(hindrance(condition));
  }
  const Rung rung = standings.rung(p, x, at);
  if (rung == Rung::barred) because.insert(Hindrance::barred);
  if (rung == Rung::supervised && answer.can_supervise.empty()) because.insert(Hindrance::no_supervisor);
  answer.because.assign(because.begin(), because.end());
  answer.may = because.empty();
  return answer;
}

std::vector<RecordId> Decider::last_checkouts(std::string_view person, std::string_view target, Instant at) {
  return wm::last_checkouts(engine_->standings, engine_->person(person), engine_->target(target), at);
}

std::vector<PersonId> Decider::who(std::string_view target, Instant at, Rung at_least) {
  const NameId x = engine_->target(target);
  std::vector<PersonId> found;
  for (const NameId person : engine_->standings.known().people()) {
    if (engine_->standings.rung(person, x, at) >= at_least) {
      found.push_back(engine_->standings.known().names().text(person));
    }
  }
  return found;
}

std::vector<PersonId> Decider::assessors(std::string_view target, Instant at) {
  const NameId x = engine_->target(target);
  std::vector<PersonId> found;
  for (const NameId person : engine_->standings.known().people()) {
    if (engine_->standings.able_to_assess(person, x, at)) {
      found.push_back(engine_->standings.known().names().text(person));
    }
  }
  return found;
}

bool Decider::able_to_assess(std::string_view person, std::string_view target, Instant at) {
  return engine_->standings.able_to_assess(engine_->person(person), engine_->target(target), at);
}

bool Decider::able_to_supervise(std::string_view person, std::string_view target, Instant at) {
  return engine_->standings.able_to_supervise(engine_->person(person), engine_->target(target), at);
}

NextAttempt Decider::next_attempt(std::string_view person, const NeedQuiz& rule, Instant at) {
  const NameId p = engine_->person(person);
  Need need;
  need.kind = NeedKind::quiz;
  need.item = engine_->standings.known().names().add(rule.quiz);
  need.pass_percent = rule.pass_percent;
  need.retry = rule.retry;
  return next_attempt_at(engine_->standings.known(), need, p, at);
}

Route Decider::route(std::string_view person, std::string_view target, Rung to, Instant at) {
  return wm::route(engine_->standings, engine_->person(person), engine_->target(target), to, at);
}

std::vector<PersonId> Decider::people() const {
  std::vector<PersonId> people;
  const Known& known = engine_->standings.known();
  for (const NameId person : known.people()) people.push_back(known.names().text(person));
  return people;
}

std::vector<TargetName> Decider::targets() const { return engine_->standings.known().targets(); }

const Rulebook* Decider::in_force(Instant t) const {
  const Book* book = engine_->standings.book_at(t);
  return book == nullptr ? nullptr : book->rulebook;
}

std::string_view word(GateState state) {
  switch (state) {
    case GateState::met:
      return "met";
    case GateState::in_grace:
      return "in_grace";
    case GateState::unmet:
      return "unmet";
  }
  return {};
}

std::string_view word(Hindrance h) {
  switch (h) {
    case Hindrance::barred:
      return "barred";
    case Hindrance::buddy:
      return "buddy";
    case Hindrance::locked_out:
      return "locked_out";
    case Hindrance::no_supervisor:
      return "no_supervisor";
    case Hindrance::staffed:
      return "staffed";
  }
  return {};
}

}  // namespace wm
