#include <map>
#include <memory>

#include "core/decide/decider.h"
#include "core/json/writing.h"
#include "core/scenario/asks.h"
#include "core/scenario/scenario.h"
#include "core/time/text.h"

namespace wm {

namespace {

using json::Member;

std::string text(std::string_view word) { return json::in_quotes(word); }
std::string text(const std::optional<Instant>& t) { return t ? json::in_quotes(to_text(*t)) : "null"; }
std::string text(const std::optional<Rung>& rung) { return rung ? text(word(*rung)) : "null"; }
std::string text(bool truth) { return truth ? "true" : "false"; }

template <class T, class Each>
std::string list(const std::vector<T>& items, const Each& each) {
  std::vector<std::string> texts;
  for (const T& item : items) texts.push_back(each(item));
  return json::list(texts);
}

std::string people(const std::vector<PersonId>& ids) {
  return json::object({{"people", list(ids, [](const PersonId& id) { return text(std::string_view(id)); })}});
}

std::string gate(const GateAnswer& g) {
  return json::object({{"id", text(std::string_view(g.id))},
                       {"for", text(word(g.guards))},
                       {"state", text(word(g.state))},
                       {"due", text(g.due)},
                       {"lapses", text(g.lapses)}});
}

std::string line(Decider& decider, const AskStanding& ask) {
  const StandingAnswer a = decider.standing(ask.person, ask.target, ask.at);
  return json::object({{"standing", text(word(a.standing))},
                       {"since", text(a.since)},
                       {"until", text(a.until)},
                       {"next", text(a.next)},
                       {"gates", list(a.gates, gate)}});
}

std::string line(Decider& decider, const AskTimeline& ask) {
  const auto step = [](const TimelineStep& s) {
    return json::object({{"at", text(std::optional(s.at))}, {"standing", text(word(s.standing))}});
  };
  return json::object({{"steps", list(decider.timeline(ask.person, ask.target, ask.from, ask.to), step)}});
}

std::string line(Decider& decider, const AskMayStart& ask) {
  const MayStart a =
      decider.may_start(ask.person, ask.machine, ask.mode, ask.at, ask.staffed, ask.present, ask.busy);
  return json::object(
      {{"may", text(a.may)}, {"because", list(a.because, [](Hindrance h) { return text(word(h)); })}});
}

std::string line(Decider& decider, const AskWho& ask) {
  return people(decider.who(ask.target, ask.at, ask.at_least));
}

std::string line(Decider& decider, const AskAssessors& ask) {
  return people(decider.assessors(ask.target, ask.at));
}

/// The kinds of ask that have a `line` above; the others are refused by name.
template <class What>
constexpr bool is_answered = requires(Decider& decider, const What& what) {
  line(decider, what);
};

/// One decider for each instant of knowledge that is asked about: what it has worked out serves again.
class Deciders {
 public:
  explicit Deciders(const Shop& shop) : shop_(shop) {}
  Decider& as_known_at(std::optional<Instant> known) {
    auto& decider = deciders_[known];
    if (!decider) decider = std::make_unique<Decider>(shop_, known);
    return *decider;
  }

 private:
  const Shop& shop_;
  std::map<std::optional<Instant>, std::unique_ptr<Decider>> deciders_;
};

std::optional<Problem> unanswered(const Ask& ask, std::size_t i) {
  if (std::visit([]<class What>(const What&) { return is_answered<What>; }, ask.what)) return std::nullopt;
  return Problem{"/asks/" + std::to_string(i) + "/ask",
                 "This version does not answer " + text(ask_word(ask.what)) + " yet.", "Take this ask out."};
}

}  // namespace

Expected<std::vector<std::string>> answer(const Scenario& scenario) {
  for (std::size_t i = 0; i < scenario.asks.size(); ++i)
    if (auto problem = unanswered(scenario.asks[i], i)) return tl::unexpected(std::move(*problem));
  Deciders deciders(scenario.shop);
  std::vector<std::string> lines;
  for (const Ask& ask : scenario.asks) {
    const auto answered = [&]<class What>(const What& what) {
      if constexpr (is_answered<What>) lines.push_back(line(deciders.as_known_at(ask.known), what));
    };
    std::visit(answered, ask.what);
  }
  return lines;
}

}  // namespace wm
