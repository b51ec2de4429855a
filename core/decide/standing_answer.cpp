#include "core/decide/standing_answer.h"

#include <algorithm>

#include "core/decide/reasons.h"

namespace wm {

namespace {

/// met, in_grace or unmet over all time.
Steps<GateState> states(const Times& holds, const Times& strict) {
  const auto state = [](bool h, bool s) {
    return s ? GateState::met : h ? GateState::in_grace : GateState::unmet;
  };
  Steps<GateState> steps(state(holds.first(), strict.first()));
  for_each_flip(holds, strict, [&](Instant at, bool h, bool s) { steps.set_from(at, state(h, s)); });
  return steps;
}

GateAnswer gate_answer(Standings& standings, const BookGate& gate, NameId person, NameId x, Instant t) {
  const Times holds = standings.gate_times(gate, person, x, false);
  const Steps<GateState> steps = states(holds, standings.gate_times(gate, person, x, true));
  GateAnswer answer;
  answer.id = gate.gate->id;
  answer.guards = gate.gate->guards;
  answer.state = steps.at(t);
  answer.reason = reason_for(standings, gate.need, person, x, t);
  switch (answer.state) {
    case GateState::met:
      answer.due = within_years(steps.until(t));
      break;
    case GateState::in_grace:
      answer.due = steps.since(t);
      break;
    case GateState::unmet:
      return answer;
  }
  answer.lapses = within_years(holds.until(t));
  answer.spared = !answer.reason.holds;
  return answer;
}

std::vector<SuspensionAnswer> suspensions(Standings& standings, NameId person, NameId x, Instant t) {
  std::vector<SuspensionAnswer> found;
  for (const KnownSuspension& suspension : standings.known().facts(person).suspensions) {
    if (!suspension.span.covers(t) || !standings.takes_in(suspension.scope, x, standings.book_at(t)))
      continue;
    const Instant ends = suspension.span.to;
    found.push_back({standings.known().record_id(suspension.no), suspension.span.from,
                     within_years(ends < forever ? std::optional(ends) : std::nullopt)});
  }
  return found;
}

/// Narrows a span around an instant.
class Around {
 public:
  explicit Around(Instant t) : t_(t) {}
  void moment(Instant at) {
    if (at <= t_) {
      span_.from = std::max(span_.from, at);
    } else {
      span_.to = std::min(span_.to, at);
    }
  }
  void span(Span span) {
    moment(span.from);
    moment(span.to);
  }
  void times(const Times& times) {
    if (const auto since = times.since(t_)) moment(*since);
    if (const auto until = times.until(t_)) moment(*until);
  }
  Span result() const { return span_; }

 private:
  Instant t_;
  Span span_;
};

void narrow(Around& around, Standings& standings, const Need& need, NameId person, NameId x, Instant t) {
  around.times(standings.need_times(need, person, x, false));
  for (const Need& part : need.of) narrow(around, standings, part, person, x, t);
  for (const Need& part : need.given) narrow(around, standings, part, person, x, t);
  for_each_cover(standings.known(), need, person, x, beginning, forever, [&](const Cover& cover) {
    around.span({cover.from, cover.to});
    return true;
  });
  for (const Instant moment : supposed_moments(standings.known(), need, person, x)) around.moment(moment);
}

template <class Facts>
void narrow(Around& around, const Facts& facts) {
  for (const auto& fact : facts) around.moment(fact.at);
}

}  // namespace

StandingAnswer standing_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x,
                               Instant t) {
  StandingAnswer answer;
  answer.standing = steps.at(t);
  answer.since = steps.since(t);
  answer.until = within_years(steps.until(t));
  if (answer.until) answer.next = steps.at(*answer.until);
  const Book* book = standings.book_at(t);
  if (book == nullptr) return answer;
  answer.rulebook = book->rulebook->version;
  const std::vector<NameId> targets = book->stands_for(x, standings.known());
  for (const NameId each : targets) {
    answer.stands_for.push_back(standings.known().names().text(each));
    for (SuspensionAnswer& one : suspensions(standings, person, each, t)) {
      const auto same = std::find(answer.suspensions.begin(), answer.suspensions.end(), one);
      if (same == answer.suspensions.end()) answer.suspensions.push_back(std::move(one));
    }
  }
  // The gates of a class that has modes by now are nobody's: each mode's target has its own.
  const bool one = targets.size() == 1 && (targets[0] == x || targets[0] == standings.known().class_of(x));
  if (!one) return answer;
  for (const BookGate* gate : book->find(targets[0])->gates) {
    answer.gates.push_back(gate_answer(standings, *gate, person, targets[0], t));
  }
  return answer;
}

Span same_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x, Instant t) {
  Around around(t);
  if (const auto since = steps.since(t)) around.moment(*since);
  if (const auto until = steps.until(t)) around.moment(*until);
  for (const Book& each : standings.books()) around.moment(each.span.from);
  const PersonFacts& facts = standings.known().facts(person);
  for (const KnownSuspension& suspension : facts.suspensions) around.span(suspension.span);
  // What came nearest to a requirement may be any of these.
  narrow(around, facts.births);
  narrow(around, facts.quizzes);
  narrow(around, facts.checkouts);
  narrow(around, facts.incidents);
  const Book* book = standings.book_at(t);
  if (book == nullptr) return around.result();
  for (const NameId target : book->stands_for(x, standings.known())) {
    for (const BookGate* gate : book->find(target)->gates) {
      around.times(standings.gate_times(*gate, person, target, false));
      around.times(standings.gate_times(*gate, person, target, true));
      narrow(around, standings, gate->need, person, target, t);
    }
  }
  return around.result();
}

}  // namespace wm
