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

/// A gate of a target over all time.
struct GateTimes {
  const BookGate& gate;
  NameId target;
  Times holds, strict;
};

std::vector<GateTimes> gates_over_time(Standings& standings, const Book& book,
                                       const std::vector<NameId>& targets, NameId person) {
  std::vector<GateTimes> gates;
  for (const NameId target : targets) {
    for (const BookGate* gate : book.find(target)->gates) {
      gates.push_back({*gate, target, standings.gate_times(*gate, person, target, false),
                       standings.gate_times(*gate, person, target, true)});
    }
  }
  return gates;
}

GateAnswer gate_answer(Standings& standings, const GateTimes& times, NameId person, Instant t) {
  const auto& [gate, x, holds, strict] = times;
  const Steps<GateState> steps = states(holds, strict);
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

/// The gates of a class that has modes by now are nobody's: each mode's target has its own.
bool has_gates(Standings& standings, const std::vector<NameId>& targets, NameId x) {
  return targets.size() == 1 && (targets[0] == x || targets[0] == standings.known().class_of(x));
}

/// The answer but for its gates.
StandingAnswer answer_without_gates(Standings& standings, const Steps<Rung>& steps, const Book* book,
                                    const std::vector<NameId>& targets, NameId person, Instant t) {
  StandingAnswer answer;
  answer.standing = steps.at(t);
  answer.since = steps.since(t);
  answer.until = within_years(steps.until(t));
  if (answer.until) answer.next = steps.at(*answer.until);
  if (book == nullptr) return answer;
  answer.rulebook = book->rulebook->version;
  for (const NameId each : targets) {
    answer.stands_for.push_back(standings.known().names().text(each));
    for (SuspensionAnswer& one : suspensions(standings, person, each, t)) {
      const auto same = std::find(answer.suspensions.begin(), answer.suspensions.end(), one);
      if (same == answer.suspensions.end()) answer.suspensions.push_back(std::move(one));
    }
  }
  return answer;
}

/// Around t, the instants between which the answer with these gates stays the same to the letter.
Span same_answer(Standings& standings, const Steps<Rung>& steps, const std::vector<GateTimes>& gates,
                 NameId person, Instant t) {
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
  for (const auto& [gate, target, holds, strict] : gates) {
    around.times(holds);
    around.times(strict);
    narrow(around, standings, gate.need, person, target, t);
  }
  return around.result();
}

}  // namespace

LastingAnswer lasting_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x,
                             Instant t) {
  const Book* book = standings.book_at(t);
  std::vector<NameId> targets;
  std::vector<GateTimes> gates;
  if (book != nullptr) {
    targets = book->stands_for(x, standings.known());
    gates = gates_over_time(standings, *book, targets, person);
  }
  StandingAnswer answer = answer_without_gates(standings, steps, book, targets, person, t);
  if (has_gates(standings, targets, x))
    for (const GateTimes& gate : gates) answer.gates.push_back(gate_answer(standings, gate, person, t));
  return {std::move(answer), same_answer(standings, steps, gates, person, t)};
}

StandingAnswer standing_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x,
                               Instant t) {
  const Book* book = standings.book_at(t);
  const std::vector<NameId> targets =
      book == nullptr ? std::vector<NameId>() : book->stands_for(x, standings.known());
  StandingAnswer answer = answer_without_gates(standings, steps, book, targets, person, t);
  if (has_gates(standings, targets, x))
    for (const GateTimes& gate : gates_over_time(standings, *book, targets, person))
      answer.gates.push_back(gate_answer(standings, gate, person, t));
  return answer;
}

}  // namespace wm
