#include <map>
#include <memory>

#include "core/decide/changes.h"
#include "core/decide/current.h"
#include "core/json/writing.h"
#include "core/records/json.h"
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

std::string line(Decider& decider, const AskDrops& ask) {
  const auto drop = [](const Drop& d) {
    return json::object({{"at", text(std::optional(d.at))},
                         {"person", text(std::string_view(d.person))},
                         {"target", text(std::string_view(d.target))},
                         {"before", text(word(d.before))},
                         {"after", text(word(d.after))}});
  };
  return json::object({{"drops", list(drops(decider, ask.from, ask.to), drop)}});
}

std::string changes(const std::vector<StandingChange>& found) {
  const auto change = [](const StandingChange& c) {
    return json::object({{"person", text(std::string_view(c.person))},
                         {"target", text(std::string_view(c.target))},
                         {"before", text(word(c.before))},
                         {"after", text(word(c.after))}});
  };
  return json::object({{"changes", list(found, change)}});
}

std::string line(Decider& decider, const AskRoute& ask) {
  const Route a = decider.route(ask.person, ask.target, ask.to, ask.at);
  return json::object(
      {{"reaches", text(a.reaches)}, {"shortest", text(a.shortest)}, {"steps", list(a.steps, to_answer)}});
}

std::string line(Current& current, const AskRestsOn& ask) {
  return changes(current.rests_on(ask.record, ask.at));
}

std::string line(Current& current, const AskWhatIf& ask) {
  return changes(current.what_if(ask.rulebook, ask.at));
}

/// Most asks need one decider; those that suppose another shop, a shop in memory.
template <class What>
constexpr bool asks_decider = requires(Decider& decider, const What& what) {
  line(decider, what);
};
/// One for each instant of knowledge that is asked about: what it has worked out serves again.
template <class Answerer>
class Answerers {
 public:
  explicit Answerers(const Shop& shop) : shop_(shop) {}
  Answerer& as_known_at(std::optional<Instant> known) {
    auto& answerer = answerers_[known];
    if (!answerer) answerer = std::make_unique<Answerer>(shop_, known);
    return *answerer;
  }

 private:
  const Shop& shop_;
  std::map<std::optional<Instant>, std::unique_ptr<Answerer>> answerers_;
};

}  // namespace

std::vector<std::string> answer(const Scenario& scenario) {
  Answerers<Decider> deciders(scenario.shop);
  Answerers<Current> shops(scenario.shop);
  std::vector<std::string> lines;
  for (const Ask& ask : scenario.asks) {
    const auto answered = [&]<class What>(const What& what) {
      if constexpr (asks_decider<What>) {
        return line(deciders.as_known_at(ask.known), what);
      } else {
        return line(shops.as_known_at(ask.known), what);
      }
    };
    lines.push_back(std::visit(answered, ask.what));
  }
  return lines;
}

}  // namespace wm
