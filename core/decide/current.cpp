#include "core/decide/current.h"

#include <absl/container/flat_hash_map.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/decide/engine.h"
#include "core/decide/standing_answer.h"
#include "core/decide/timelines.h"

namespace wm {

namespace {

/// An answer, and the instants between which it stays the same.
struct Card {
  Span same;
  StandingAnswer answer;
};

/// Past this many, all cards are let go: they can be made again.
constexpr std::size_t most_cards = 20'000;

/// Whose work rests on somebody's standing: what they assessed or supervised.
struct Witnessed {
  Instant at;
  NameId person;
};

std::vector<NameId> all_targets(Known& known) {
  std::set<TargetName> names;
  for (const Rulebook& rulebook : known.rulebooks())
    for (TargetName& target : targets_of(rulebook)) names.insert(std::move(target));
  std::vector<NameId> targets;
  for (const TargetName& name : names) targets.push_back(known.add_target(name));
  return targets;
}

}  // namespace

struct Current::Engine {
  /// Who is to be worked out again, and from which instant on their standings or abilities may have changed.
  using Affected = std::map<NameId, Instant>;
  using OldRows = std::map<NameId, std::unique_ptr<Timelines::Row>>;

  Engine(const Shop& shop, std::optional<Instant> known)
      : standings(shop, known), timelines(all_targets(standings.known())) {
    standings.look_up_in(&timelines);
    for (const NameId person : standings.known().people()) {
      work_out(person);
      const PersonFacts& facts = standings.known().facts(person);
      for (const KnownCheckout& checkout : facts.checkouts) note(checkout.assessor, checkout.at, person);
      for (const KnownSupervised& session : facts.supervised) note(session.supervisor, session.at, person);
    }
    standings.forget_instants();
    for (auto& list : witnessed) {
      std::sort(list.begin(), list.end(), [](const Witnessed& a, const Witnessed& b) { return a.at < b.at; });
    }
  }

  NameId name(std::string_view text) const { return standings.known().names().find(text); }
  /// A target's name may be new and still stand for something: for its class.
  NameId target(std::string_view text) {
    const NameId known = name(text);
    return known != no_name && standings.known().class_of(known) != no_name
               ? known
               : standings.known().add_target(text);
  }
  const std::string& text(NameId id) const { return standings.known().names().text(id); }

  void note(NameId witness, Instant at, NameId person) {
    if (witness >= witnessed.size()) witnessed.resize(witness + 1);
    witnessed[witness].push_back({at, person});
  }

  std::unique_ptr<Timelines::Row> worked_out(NameId person) {
    auto row = std::make_unique<Timelines::Row>();
    for (const NameId target : timelines.targets())
      Timelines::add(*row, standings.steps_anew(person, target));
    row->ends.shrink_to_fit();
    row->changes.shrink_to_fit();
    return row;
  }

  /// Works somebody's standings out again, and returns what they were.
  std::unique_ptr<Timelines::Row> work_out(NameId person) {
    auto before = timelines.keep(person, nullptr);
    auto row = worked_out(person);
    // What was kept of single instants is nobody else's, since theirs are looked up.
    standings.forget_instants();
    timelines.keep(person, std::move(row));
    return before;
  }

  /// Works out everybody affected, and whoever is affected by that in turn. Standings rest on others' only in
  /// the past, so what changes comes later each time round, and it comes to an end.
  OldRows work_through(Affected affected) {
    OldRows old;
    while (!affected.empty()) {
      const auto [person, since] = *affected.begin();
      affected.erase(affected.begin());
      standings.forget(person);
      forget_cards(person);
      std::unique_ptr<Timelines::Row> before = work_out(person);
      Instant earliest = since;
      if (before) {
        earliest = forever;
        for (std::size_t i = 0; i < timelines.targets().size(); ++i)
          earliest = std::min(earliest, timelines.difference(*before, *timelines.row(person), i).from);
      }
      for (const auto& [at, other] : witnessed_since(person, std::min(earliest, ability_since(person))))
        if (other != person) affect(affected, other, at);
      able_since.erase(person);
      old.try_emplace(person, std::move(before));
    }
    return old;
  }

  Instant ability_since(NameId person) const {
    const auto found = able_since.find(person);
    return found == able_since.end() ? forever : found->second;
  }

  static void affect(Affected& affected, NameId person, Instant since) {
    const auto [place, fresh] = affected.try_emplace(person, since);
    if (!fresh) place->second = std::min(place->second, since);
  }

  /// What somebody witnessed after an instant.
  std::span<const Witnessed> witnessed_since(NameId witness, Instant since) const {
    if (witness >= witnessed.size()) return {};
    const auto& list = witnessed[witness];
    const auto first = std::partition_point(list.begin(), list.end(),
                                            [&](const Witnessed& each) { return each.at <= since; });
    return {first, list.end()};
  }

  /// Who is affected at once by a record being there or not.
  Affected affected_by(RecordNo no) {
    const Known& known = standings.known();
    const RecordPlace place = known.record_place(no);
    const Instant at = known.record_at(no);
    Affected affected;
    const auto is = [&](auto fact) { return place.kind == Fact(fact).index(); };
    if (place.of == no_name || is(Lockout()) || is(Release())) return affected;
    if (is(Publish())) {
      for (const NameId person : known.people())
        if (has_item(known.facts(person), place.of)) affect(affected, person, at);
    } else if (is(Change())) {
      for (const NameId person : known.people())
        if (!known.facts(person).checkouts.empty()) affect(affected, person, at);
    } else if (is(Reinstate()) || is(Dismiss())) {
      const NameId person = known.record_place(place.of).of;
      affect(affected, person, at);
      able_since[person] = at;
    } else {
      affect(affected, place.of, at);
      if (is(Suspend()) || is(Appoint())) able_since[place.of] = at;
    }
    return affected;
  }

  static bool has_item(const PersonFacts& facts, NameId item) {
    const auto any = [&](const auto& list, auto member) {
      return std::any_of(list.begin(), list.end(), [&](const auto& fact) { return fact.*member == item; });
    };
    return any(facts.lessons, &KnownLesson::lesson) || any(facts.quizzes, &KnownQuiz::quiz) ||
           any(facts.checkouts, &KnownCheckout::checkout);
  }

  std::vector<Shift> shifts(const OldRows& old) const {
    std::vector<Shift> found;
    static const Timelines::Row none;
    for (const auto& [person, before] : old) {
      if (!before) continue;
      for (std::size_t i = 0; i < timelines.targets().size(); ++i) {
        const Span span = timelines.difference(*before, *timelines.row(person), i);
        if (span.empty()) continue;
        found.push_back({text(person), text(timelines.targets()[i]), span.from,
                         span.to < forever ? std::optional(span.to) : std::nullopt});
      }
    }
    std::sort(found.begin(), found.end(), [](const Shift& a, const Shift& b) {
      return std::tie(a.person, a.target) < std::tie(b.person, b.target);
    });
    return found;
  }

  void forget_cards(NameId person) {
    if (person < cards.size()) {
      card_count -= cards[person].size();
      cards[person].clear();
    }
  }

  Rung rung(NameId person, NameId x, Instant at) {
    if (timelines.has(person, x)) return timelines.at(person, x, at);
    return standings.rung(person, x, at);
  }

  Standings standings;
  Timelines timelines;
  std::vector<std::vector<Witnessed>> witnessed;  // by witness, in order of time
  std::map<NameId, Instant> able_since;           // whose abilities changed besides their standings
  std::vector<absl::flat_hash_map<NameId, std::unique_ptr<Card>>> cards;  // by person, by target
  std::size_t card_count = 0;
  StandingAnswer nobody;
};

Current::Current(const Shop& shop, std::optional<Instant> known)
    : engine_(std::make_unique<Engine>(shop, known)) {}
Current::~Current() = default;
Current::Current(Current&&) noexcept = default;
Current& Current::operator=(Current&&) noexcept = default;

Rung Current::rung(std::string_view person, std::string_view target, Instant at) {
  return engine_->rung(engine_->name(person), engine_->target(target), at);
}

const StandingAnswer& Current::standing(std::string_view person, std::string_view target, Instant at) {
  Engine& engine = *engine_;
  const NameId p = engine.name(person);
  const NameId x = engine.target(target);
  if (p == no_name) {
    const Steps<Rung> steps = engine.standings.steps_anew(p, x);
    return engine.nobody = standing_answer(engine.standings, steps, p, x, at);
  }
  if (p >= engine.cards.size()) engine.cards.resize(p + 1);
  const auto found = engine.cards[p].find(x);
  if (found != engine.cards[p].end() && found->second->same.covers(at)) return found->second->answer;
  if (engine.card_count > most_cards) {
    for (auto& of_person : engine.cards) of_person.clear();
    engine.card_count = 0;
  }
  const Steps<Rung> steps =
      engine.timelines.has(p, x) ? engine.timelines.steps(p, x) : engine.standings.steps_anew(p, x);
  auto& card = engine.cards[p][x];
  if (!card) {
    card = std::make_unique<Card>();
    ++engine.card_count;
  }
  card->answer = standing_answer(engine.standings, steps, p, x, at);
  card->same = same_answer(engine.standings, steps, p, x, at);
  engine.standings.forget_instants();
  return card->answer;
}

Steps<Rung> Current::standing_steps(std::string_view person, std::string_view target) {
  const NameId p = engine_->name(person), x = engine_->target(target);
  return engine_->timelines.has(p, x) ? engine_->timelines.steps(p, x) : standing_steps_anew(person, target);
}

Steps<Rung> Current::standing_steps_anew(std::string_view person, std::string_view target) {
  const NameId p = engine_->name(person), x = engine_->target(target);
  Steps<Rung> steps = engine_->standings.steps_anew(p, x);
  engine_->standings.forget_instants();
  return steps;
}

std::vector<PersonId> Current::who(std::string_view target, Instant at, Rung at_least) {
  const NameId x = engine_->target(target);
  std::vector<PersonId> found;
  for (const NameId person : engine_->standings.known().people())
    if (engine_->rung(person, x, at) >= at_least) found.push_back(engine_->text(person));
  return found;
}

std::vector<Shift> Current::take(const Record& record) {
  Engine& engine = *engine_;
  const RecordNo no = engine.standings.known().insert(record);
  const auto witness = [&](const PersonId& who, const PersonId& person) {
    const NameId by = engine.name(who);
    engine.note(by, record.at, engine.name(person));
    std::inplace_merge(engine.witnessed[by].begin(), engine.witnessed[by].end() - 1,
                       engine.witnessed[by].end(),
                       [](const Witnessed& a, const Witnessed& b) { return a.at < b.at; });
  };
  if (const auto* checkout = std::get_if<Checkout>(&record.fact))
    witness(checkout->assessor, checkout->person);
  if (const auto* session = std::get_if<Supervised>(&record.fact))
    witness(session->supervisor, session->person);
  return engine.shifts(engine.work_through(engine.affected_by(no)));
}

std::vector<Shift> Current::strike_out(std::string_view record) {
  Engine& engine = *engine_;
  const auto no = engine.standings.known().find_record(record);
  if (!no) return {};
  engine.standings.known().take_out(*no);
  return engine.shifts(engine.work_through(engine.affected_by(*no)));
}

void Current::add_person(const PersonId& person) {
  engine_->standings.known().add_person(person);
  engine_->work_out(engine_->name(person));
}

std::vector<StandingChange> Current::rests_on(std::string_view record, Instant at) {
  Engine& engine = *engine_;
  Known& known = engine.standings.known();
  std::vector<StandingChange> found;
  const auto no = known.find_record(record);
  const Book* book = engine.standings.book_at(at);
  if (!no || book == nullptr || known.record_at(*no) > at) return found;
  known.take_out(*no);
  Engine::OldRows old = engine.work_through(engine.affected_by(*no));
  known.put_back(*no);
  for (auto& [person, row] : old) {
    // As it was, and what was worked out without the record let go.
    const std::unique_ptr<Timelines::Row> without = engine.timelines.keep(person, std::move(row));
    engine.standings.forget(person);
    engine.forget_cards(person);
    for (std::size_t i = 0; i < engine.timelines.targets().size(); ++i) {
      const NameId target = engine.timelines.targets()[i];
      if (book->find(target) == nullptr) continue;
      const StandingChange change{engine.text(person), engine.text(target),
                                  engine.timelines.at(person, target, at),
                                  Timelines::steps(*without, i).at(at)};
      if (change.before != change.after) found.push_back(change);
    }
  }
  std::sort(found.begin(), found.end(), [](const StandingChange& a, const StandingChange& b) {
    return std::tie(a.person, a.target) < std::tie(b.person, b.target);
  });
  return found;
}

std::vector<StandingChange> Current::what_if(const Rulebook& rulebook, Instant at) {
  Engine& engine = *engine_;
  Rulebook supposed = rulebook;
  supposed.effective_from = at;
  std::vector<const Rulebook*> rulebooks;
  for (const Rulebook& each : engine.standings.known().rulebooks())
    if (each.effective_from < at) rulebooks.push_back(&each);
  rulebooks.push_back(&supposed);
  Standings after(engine.standings.shared_known(), std::move(rulebooks), &engine.timelines, at);
  std::map<TargetName, NameId> targets;
  for (const auto* standings : {&engine.standings, &after}) {
    if (const Book* book = standings->book_at(at))
      for (const auto& [id, target] : book->targets) targets.emplace(engine.text(id), id);
  }
  std::vector<StandingChange> found;
  for (const NameId person : engine.standings.known().people()) {
    for (const auto& [name, target] : targets) {
      const Rung before = engine.rung(person, target, at), with = after.rung(person, target, at);
      if (before != with) found.push_back({engine.text(person), name, before, with});
    }
    after.forget(person);
    after.forget_instants();
  }
  return found;
}

std::size_t Current::timeline_bytes() const { return engine_->timelines.bytes(); }

}  // namespace wm
