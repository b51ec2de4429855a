#include "core/decide/current.h"

#include <absl/container/flat_hash_map.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

#include "core/decide/depends.h"
#include "core/decide/engine.h"
#include "core/decide/standing_answer.h"
#include "core/decide/timelines.h"

namespace wm {

namespace {

/// Past this many, all cards are let go: they can be made again.
constexpr std::size_t most_cards = 20'000;

std::vector<NameId> all_targets(Known& known) {
  std::vector<NameId> targets;
  for (const TargetName& name : known.targets()) targets.push_back(known.add_target(name));
  return targets;
}

Shift shift(const PersonId& person, const TargetName& target, const Span& span) {
  return {person, target, span.from, span.to < forever ? std::optional(span.to) : std::nullopt};
}

}  // namespace

struct Current::Engine {
  /// Whose record rests on somebody's standing a second before: a check-out they assessed, a session they
  /// supervised.
  struct Witnessed {
    Instant at;
    NameId person;
    NameId about;  // the check-out's name or the session's target
    bool checkout;
  };
  /// Who is to be worked out again, on which targets: who may assess first, the longest appointed before the
  /// others, since others' standings rest on theirs.
  using Affected = std::map<std::pair<Instant, NameId>, TargetSet>;
  using OldRows = std::map<NameId, std::unique_ptr<Timelines::Row>>;

  Engine(const Shop& shop, std::optional<Instant> known)
      : standings(shop, known),
        timelines(all_targets(standings.known())),
        depends(standings.known(), standings.books(), timelines.targets()),
        all(timelines.targets().size(), true),
        decider(standings) {
    // It begins with a guess, that all records count, and works out everybody until nothing is found
    // otherwise.
    standings.suppose_all_count(true);
    Affected affected;
    for (const NameId person : standings.known().people()) {
      const PersonFacts& facts = standings.known().facts(person);
      for (const KnownCheckout& checkout : facts.checkouts) note(person, checkout);
      for (const KnownSupervised& session : facts.supervised) note(person, session);
      timelines.keep(person, worked_out(person, all));
      affect(affected, person, all);
    }
    standings.suppose_all_count(false);
    standings.forget_instants();
    standings.look_up_in(&timelines);
    for (auto& list : witnessed) std::sort(list.begin(), list.end(), earlier);
    work_through(std::move(affected));
  }

  // --- names -------------------------------------------------------------------------------------------

  NameId name(std::string_view text) const { return standings.known().names().find(text); }
  /// A target's name may be new and still stand for something: for its class.
  NameId target(std::string_view text) {
    const NameId known = name(text);
    return known != no_name && standings.known().class_of(known) != no_name
               ? known
               : standings.known().add_target(text);
  }
  const std::string& text(NameId id) const { return standings.known().names().text(id); }

  // --- who rests on whom -------------------------------------------------------------------------------

  static bool earlier(const Witnessed& a, const Witnessed& b) { return a.at < b.at; }

  std::vector<Witnessed>& by(NameId witness) {
    if (witness >= witnessed.size()) witnessed.resize(witness + 1);
    return witnessed[witness];
  }
  void note(NameId person, const KnownCheckout& checkout) {
    by(checkout.assessor).push_back({checkout.at, person, checkout.checkout, true});
  }
  void note(NameId person, const KnownSupervised& session) {
    by(session.supervisor).push_back({session.at, person, session.target, false});
  }
  void note_new(NameId witness, const Witnessed& one) {
    auto& list = by(witness);
    list.insert(std::upper_bound(list.begin(), list.end(), one, earlier), one);
  }

  /// Whether a row says something else at t on any of the targets that whoever witnessed this was asked
  /// about.
  bool differs(const Timelines::Row& a, const Timelines::Row& b, const Witnessed& one, Instant t) const {
    const Known& known = standings.known();
    for (std::size_t i = 0; i < timelines.targets().size(); ++i) {
      const NameId target = timelines.targets()[i];
      const bool asked = one.checkout ? depends.assessed_by(one.about).has(i)
                                      : known.class_of(target) == known.class_of(one.about);
      if (asked && Timelines::at(a, i, t) != Timelines::at(b, i, t)) return true;
    }
    return false;
  }

  void affect(Affected& affected, NameId person, const TargetSet& on) const {
    const auto& appointments = standings.known().facts(person).appointments;
    const Instant since = appointments.empty() ? forever : appointments.front().span.from;
    const auto [place, fresh] = affected.try_emplace({since, person}, on);
    if (!fresh) place->second.add(on);
  }

  /// Adds whose standings rest on one that was otherwise, or on an ability that was from some instant on.
  void affect_others(Affected& affected, NameId person, const Timelines::Row& before, Instant able_since) {
    if (person >= witnessed.size() || witnessed[person].empty()) return;
    const Timelines::Row& after = *timelines.row(person);
    Instant earliest = able_since;
    for (std::size_t i = 0; i < timelines.targets().size(); ++i)
      earliest = std::min(earliest, timelines.difference(before, after, i).from);
    const auto& list = witnessed[person];
    const auto first = std::partition_point(list.begin(), list.end(),
                                            [&](const Witnessed& each) { return each.at <= earliest; });
    static const std::size_t checkout = Fact(Checkout()).index(), session = Fact(Supervised()).index();
    for (auto each = first; each != list.end(); ++each) {
      if (each->person == person) continue;
      if (each->at > able_since || differs(before, after, *each, each->at - 1))
        affect(affected, each->person, depends.on(each->checkout ? checkout : session, each->about));
    }
  }

  // --- working out -------------------------------------------------------------------------------------

  /// Those targets anew, the others as they are kept.
  std::unique_ptr<Timelines::Row> worked_out(NameId person, const TargetSet& on) {
    auto row = std::make_unique<Timelines::Row>();
    for (std::size_t i = 0; i < timelines.targets().size(); ++i) {
      if (on.has(i)) {
        Timelines::add(*row, standings.steps_anew(person, timelines.targets()[i]));
      } else {
        Timelines::add(*row, *timelines.row(person), i);
      }
    }
    row->ends.shrink_to_fit();
    row->changes.shrink_to_fit();
    return row;
  }

  /// Works somebody's standings out again, and returns what they were. Their own standing before a use, or
  /// when something must be given for a check-out, is looked up in what was found so far; where that was
  /// wrong, once more. Since it lies in the past, what is right reaches further each time.
  std::unique_ptr<Timelines::Row> work_out(NameId person, const TargetSet& on) {
    standings.forget(person);
    std::unique_ptr<Timelines::Row> old;
    for (;;) {
      standings.looked_up(person);
      auto row = worked_out(person, on);
      standings.forget_instants();
      const bool same = *row == *timelines.row(person);
      auto before = timelines.keep(person, std::move(row));
      if (!old) old = std::move(before);
      if (same || !standings.looked_up(person)) return old;
      standings.forget_own(person);
    }
  }

  /// Works out everybody affected, and whoever is affected by that in turn. Standings rest on others' only in
  /// the past, so what changes comes later each time round, and it comes to an end.
  OldRows work_through(Affected affected) {
    standings.forget_instants();  // what the decider was asked in between
    OldRows old;
    Affected next;  // a round later, so that nobody is worked out again for each of those they learned from
    while (!affected.empty() || !next.empty()) {
      if (affected.empty()) affected.swap(next);
      const NameId person = affected.begin()->first.second;
      const TargetSet on = std::move(affected.begin()->second);
      affected.erase(affected.begin());
      forget_cards(person);
      std::unique_ptr<Timelines::Row> before = work_out(person, on);
      const auto able = able_since.find(person);
      affect_others(next, person, *before, able == able_since.end() ? forever : able->second);
      if (able != able_since.end()) able_since.erase(able);
      old.try_emplace(person, std::move(before));
    }
    return old;
  }

  /// Who is affected at once by a record being there or not. To be asked while it is there.
  Affected affected_by(RecordNo no) {
    const Known& known = standings.known();
    const RecordPlace place = known.record_place(no);
    const Instant at = known.record_at(no);
    const TargetSet& on = depends.on(place.kind, known.about(no));
    Affected affected;
    const auto is = [&](auto fact) { return place.kind == Fact(fact).index(); };
    if (place.of == no_name || is(Lockout()) || is(Release())) return affected;
    if (is(Publish())) {
      for (const NameId person : known.people())
        if (has_item(known.facts(person), place.of)) affect(affected, person, on);
    } else if (is(Change())) {
      for (const NameId person : known.people())
        if (!known.facts(person).checkouts.empty()) affect(affected, person, on);
    } else if (is(Reinstate()) || is(Dismiss())) {
      const NameId person = known.record_place(place.of).of;
      affect(affected, person, on);
      able_since[person] = at;
    } else {
      affect(affected, place.of, on);
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
        found.push_back(shift(text(person), text(timelines.targets()[i]), span));
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
  Depends depends;
  TargetSet all;
  Decider decider;                                // over the same standings
  std::vector<std::vector<Witnessed>> witnessed;  // by witness, in order of time
  std::map<NameId, Instant> able_since;           // whose abilities changed besides their standings
  std::vector<absl::flat_hash_map<NameId, std::unique_ptr<LastingAnswer>>> cards;  // by person, by target
  std::size_t card_count = 0;
  StandingAnswer nobody;
};

Current::Current(const Shop& shop, std::optional<Instant> known)
    : engine_(std::make_unique<Engine>(shop, known)) {}
Current::~Current() = default;
Current::Current(Current&&) noexcept = default;
Current& Current::operator=(Current&&) noexcept = default;

Decider& Current::decider() { return engine_->decider; }

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
    card = std::make_unique<LastingAnswer>();
    ++engine.card_count;
  }
  *card = lasting_answer(engine.standings, steps, p, x, at);
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

std::vector<PersonId> Current::people() const {
  std::vector<PersonId> people;
  for (const NameId person : engine_->standings.known().people()) people.push_back(engine_->text(person));
  return people;
}

std::vector<TargetName> Current::targets() const {
  std::vector<TargetName> targets;
  for (const NameId target : engine_->timelines.targets()) targets.push_back(engine_->text(target));
  return targets;
}

std::vector<Rung> Current::everyone(Instant at) const {
  const auto& people = engine_->standings.known().people();
  const std::size_t targets = engine_->timelines.targets().size();
  std::vector<Rung> rungs;
  rungs.reserve(people.size() * targets);
  for (const NameId person : people) Timelines::all_at(*engine_->timelines.row(person), at, rungs);
  return rungs;
}

bool Current::able_to_assess(std::string_view person, std::string_view target, Instant at) {
  return engine_->standings.able_to_assess(engine_->name(person), engine_->target(target), at);
}

bool Current::able_to_supervise(std::string_view person, std::string_view target, Instant at) {
  return engine_->standings.able_to_supervise(engine_->name(person), engine_->target(target), at);
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
  if (const auto* checkout = std::get_if<Checkout>(&record.fact)) {
    engine.note_new(engine.name(checkout->assessor),
                    {record.at, engine.name(checkout->person), engine.name(checkout->checkout), true});
  }
  if (const auto* session = std::get_if<Supervised>(&record.fact)) {
    engine.note_new(engine.name(session->supervisor),
                    {record.at, engine.name(session->person), engine.name(session->target), false});
  }
  return engine.shifts(engine.work_through(engine.affected_by(no)));
}

std::vector<Shift> Current::strike_out(std::string_view record) {
  Engine& engine = *engine_;
  const auto no = engine.standings.known().find_record(record);
  if (!no) return {};
  Engine::Affected affected = engine.affected_by(*no);
  engine.standings.known().take_out(*no);
  return engine.shifts(engine.work_through(std::move(affected)));
}

void Current::add_person(const PersonId& person) {
  engine_->standings.known().add_person(person);
  const NameId id = engine_->name(person);
  if (engine_->timelines.row(id) != nullptr) return;
  engine_->standings.forget_instants();
  engine_->timelines.keep(id, engine_->worked_out(id, engine_->all));
}

void Current::set_machine(const Machine& machine) { engine_->standings.known().set_machine(machine); }

std::vector<Shift> Current::if_taken(const Record& record) {
  std::vector<Shift> shifts = take(record);
  strike_out(record.id);
  return shifts;
}

std::vector<Shift> Current::shifts_from(Current& before) {
  std::set<TargetName> targets;
  for (Current* shop : {this, &before})
    for (TargetName& target : shop->targets()) targets.insert(std::move(target));
  std::vector<PersonId> people, here = this->people(), there = before.people();
  std::set_intersection(here.begin(), here.end(), there.begin(), there.end(), std::back_inserter(people));
  std::vector<Shift> found;
  for (const PersonId& person : people) {
    Timelines::Row then, now;
    for (const TargetName& target : targets) {
      Timelines::add(then, before.standing_steps(person, target));
      Timelines::add(now, standing_steps(person, target));
    }
    std::size_t place = 0;
    for (const TargetName& target : targets) {
      const Span span = engine_->timelines.difference(then, now, place++);
      if (!span.empty()) found.push_back(shift(person, target, span));
    }
  }
  return found;
}

std::vector<StandingChange> Current::rests_on(std::string_view record, Instant at) {
  Engine& engine = *engine_;
  Known& known = engine.standings.known();
  std::vector<StandingChange> found;
  const auto no = known.find_record(record);
  const Book* book = engine.standings.book_at(at);
  if (!no || book == nullptr || known.record_at(*no) > at) return found;
  Engine::Affected affected = engine.affected_by(*no);
  known.take_out(*no);
  Engine::OldRows old = engine.work_through(std::move(affected));
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
                                  engine.timelines.at(person, target, at), Timelines::at(*without, i, at)};
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
