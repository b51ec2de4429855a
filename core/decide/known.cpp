#include "core/decide/known.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace wm {

NameId NameTable::add(std::string_view text) {
  const auto found = ids_.find(text);
  if (found != ids_.end()) return found->second;
  const auto id = static_cast<NameId>(texts_.size());
  texts_.emplace_back(text);
  ids_.emplace(texts_.back(), id);
  return id;
}

NameId NameTable::find(std::string_view text) const {
  const auto found = ids_.find(text);
  return found == ids_.end() ? no_name : found->second;
}

namespace {

bool exists(const Record& record, std::optional<Instant> known) {
  if (!known) return !record.voided;
  return record.recorded <= *known && !(record.voided && *record.voided <= *known);
}

}  // namespace

Known::Known(const Shop& shop, std::optional<Instant> known)
    : zone_(shop.zone), by_id_(0, IdHash{this}, IdEqual{this}) {
  std::vector<const Record*> records;
  for (const Record& record : shop.records) {
    if (exists(record, known)) records.push_back(&record);
  }
  // What ends something comes after it, and records that were entered in order stay so.
  std::stable_sort(records.begin(), records.end(), [](const Record* a, const Record* b) {
    return std::tie(a->at, a->id) < std::tie(b->at, b->id);
  });
  for (const Rulebook& rulebook : shop.rulebooks) {
    if (!known || rulebook.recorded <= *known) rulebooks_.push_back(rulebook);
  }
  for (const Machine& machine : shop.machines) set_machine(machine);
  std::vector<PersonId> people = shop.people;
  std::sort(people.begin(), people.end());
  for (const PersonId& person : people) people_.push_back(names_.add(person));

  record_ids_.reserve(records.size());
  record_ats_.reserve(records.size());
  record_places_.reserve(records.size());
  by_id_.reserve(records.size());
  for (const Record* record : records) number(*record);
  for (RecordNo no = 0; no < records.size(); ++no) take(*records[no], no);
  sort();
  loading_ = false;
}

RecordNo Known::number(const Record& record) {
  const auto no = static_cast<RecordNo>(record_ids_.size());
  record_ids_.push_back(record.id);
  record_ats_.push_back(record.at);
  record_places_.push_back({static_cast<std::uint8_t>(record.fact.index()), no_name});
  // The id of a record that was taken out may come again.
  const auto [place, fresh] = by_id_.insert(no);
  if (!fresh) {
    by_id_.erase(place);
    by_id_.insert(no);
  }
  return no;
}

std::optional<RecordNo> Known::find_record(std::string_view id) const {
  const auto found = by_id_.find(id);
  return found == by_id_.end() ? std::nullopt : std::optional(*found);
}

RecordNo Known::insert(const Record& record) {
  const RecordNo no = number(record);
  take(record, no);
  return no;
}

void Known::add_person(std::string_view id) {
  const auto place = std::partition_point(people_.begin(), people_.end(),
                                          [&](NameId other) { return names_.text(other) < id; });
  if (place == people_.end() || names_.text(*place) != id) people_.insert(place, names_.add(id));
}

NameId Known::add_target(std::string_view target) {
  const NameId machine_class = names_.add(wm::class_of(target));
  const NameId id = names_.add(target);
  if (class_of_.size() < names_.size()) class_of_.resize(names_.size(), no_name);
  class_of_[machine_class] = machine_class;
  class_of_[id] = machine_class;
  return id;
}

KnownScope Known::scope(const Scope& scope) {
  if (const auto* tier = std::get_if<TierScope>(&scope)) return {KnownScope::Kind::tier, tier->tier, no_name};
  if (const auto* target = std::get_if<TargetScope>(&scope)) {
    return {KnownScope::Kind::target, 0, add_target(target->target)};
  }
  return {};
}

// --- lists in order ------------------------------------------------------------------------------------

template <class Fact>
bool Known::earlier(const Fact& a, const Fact& b) const {
  const auto at = [](const auto& fact) {
    if constexpr (requires { fact.at; }) {
      return fact.at;
    } else {
      return fact.span.from;
    }
  };
  return std::tuple(at(a), std::string_view(record_ids_[a.no])) <
         std::tuple(at(b), std::string_view(record_ids_[b.no]));
}

template <class Fact>
bool Known::before(const Fact& a, const Fact& b) const {
  const auto by = [&](auto member) { return a.*member != b.*member ? a.*member < b.*member : earlier(a, b); };
  if constexpr (std::is_same_v<Fact, KnownBirth>) {
    return std::tuple(a.at, a.recorded, std::string_view(record_ids_[a.no])) <
           std::tuple(b.at, b.recorded, std::string_view(record_ids_[b.no]));
  } else if constexpr (std::is_same_v<Fact, KnownDocument>) {
    return by(&KnownDocument::document);
  } else if constexpr (std::is_same_v<Fact, KnownLesson>) {
    return by(&KnownLesson::lesson);
  } else if constexpr (std::is_same_v<Fact, KnownQuiz>) {
    return by(&KnownQuiz::quiz);
  } else if constexpr (std::is_same_v<Fact, KnownCheckout>) {
    return by(&KnownCheckout::checkout);
  } else if constexpr (std::is_same_v<Fact, KnownSupervised>) {
    return by(&KnownSupervised::target);
  } else if constexpr (std::is_same_v<Fact, KnownUse>) {
    return by(&KnownUse::target);
  } else {
    return earlier(a, b);
  }
}

template <class Fact>
void Known::add(std::vector<Fact>& list, Fact fact) {
  const auto less = [this](const Fact& a, const Fact& b) { return before(a, b); };
  // While loading, everything comes in order of time, and is put in its full order at the end.
  const auto place = loading_ ? list.end() : std::upper_bound(list.begin(), list.end(), fact, less);
  list.insert(place, std::move(fact));
}

void Known::sort() {
  const auto in_order = [this](auto& list) {
    using Fact = typename std::decay_t<decltype(list)>::value_type;
    std::sort(list.begin(), list.end(), [this](const Fact& a, const Fact& b) { return before(a, b); });
    list.shrink_to_fit();
  };
  for (const auto& facts : facts_) {
    if (!facts) continue;
    in_order(facts->births);
    in_order(facts->documents);
    in_order(facts->lessons);
    in_order(facts->quizzes);
    in_order(facts->checkouts);
    in_order(facts->supervised);
    in_order(facts->uses);
  }
}

// --- taking in, taking out -----------------------------------------------------------------------------

void Known::take(const Record& record, RecordNo no) {
  struct Take {
    Known& k;
    const Record& record;
    RecordNo no;
    Instant at = record.at;
    Day day = k.zone_.day(record.at);

    PersonFacts& of(const PersonId& person) {
      const NameId id = k.names_.add(person);
      k.record_places_[no].of = id;
      return k.facts_of(id);
    }
    NameId of(NameId id) { return k.record_places_[no].of = id; }
    void operator()(const Birth& r) {
      k.add(of(r.person).births, KnownBirth{at, record.recorded, r.born, no});
    }
    void operator()(const Document& r) {
      k.add(of(r.person).documents, KnownDocument{at, k.names_.add(r.document), k.after(r.until), no, day});
    }
    void operator()(const Lesson& r) {
      k.add(of(r.person).lessons, KnownLesson{at, k.names_.add(r.lesson), r.revision, no, day});
    }
    void operator()(const Quiz& r) {
      k.add(of(r.person).quizzes,
            KnownQuiz{at, k.names_.add(r.quiz), r.revision, r.correct, r.total, r.critical_missed, no, day});
    }
    void operator()(const Checkout& r) {
      k.add(of(r.person).checkouts, KnownCheckout{at, k.names_.add(r.checkout), r.revision, r.outcome,
                                                  k.names_.add(r.assessor), no, day});
    }
    void operator()(const Supervised& r) {
      k.add(of(r.person).supervised,
            KnownSupervised{at, k.add_target(r.target), r.minutes, k.names_.add(r.supervisor), no, day});
    }
    void operator()(const Use& r) { k.add(of(r.person).uses, KnownUse{at, k.add_target(r.target), no, day}); }
    void operator()(const Incident& r) {
      PersonFacts& facts = of(r.person);
      if (r.part != Part::operating) return;
      k.add(facts.incidents, KnownIncident{at, k.class_of(k.add_target(r.target)), r.severity, no});
    }
    void operator()(const Suspend& r) {
      const Instant ends = k.after(r.until);
      k.add(of(r.person).suspensions, KnownSuspension{{at, ends}, ends, k.scope(r.scope), no});
      already_ended();
    }
    void operator()(const Appoint& r) {
      const Instant ends = k.after(r.until);
      k.add(of(r.person).appointments, KnownAppointment{{at, ends}, ends, k.scope(r.scope), r.founding, no});
      already_ended();
    }
    void operator()(const Publish& r) {
      k.add(at_grown(k.publications_, of(k.names_.add(r.item))), Publication{at, r.revision, no, day});
    }
    void operator()(const Lockout& r) {
      k.add(at_grown(k.lockouts_, of(k.names_.add(r.machine))), KnownLockout{{at, forever}, forever, no});
      already_ended();
    }
    void operator()(const Change& r) {
      k.add(at_grown(k.changes_, of(k.add_target(r.target))), KnownChange{at, no});
    }
    void operator()(const Reinstate& r) { end(r.suspension); }
    void operator()(const Dismiss& r) { end(r.appointment); }
    void operator()(const Release& r) { end(r.lockout); }
    /// By what happened at the same instant and has the lesser id.
    void already_ended() {
      if (k.ends_.count(no) != 0) k.set_end(no);
    }
    void end(const RecordId& id) {
      // What was struck out, or not known yet, has nothing to end.
      const auto ended = k.find_record(id);
      if (!ended) return;
      k.record_places_[no].of = *ended;
      k.ends_[*ended].push_back({at, no});
      k.set_end(*ended);
    }
  };
  std::visit(Take{*this, record, no}, record.fact);
}

template <class Take>
void Known::with_list(RecordPlace place, Take take) {
  const auto is = [&](auto fact) { return place.kind == Fact(fact).index(); };
  if (is(Birth())) return take(facts_of(place.of).births);
  if (is(Document())) return take(facts_of(place.of).documents);
  if (is(Lesson())) return take(facts_of(place.of).lessons);
  if (is(Quiz())) return take(facts_of(place.of).quizzes);
  if (is(Checkout())) return take(facts_of(place.of).checkouts);
  if (is(Supervised())) return take(facts_of(place.of).supervised);
  if (is(Use())) return take(facts_of(place.of).uses);
  if (is(Incident())) return take(facts_of(place.of).incidents);
  if (is(Suspend())) return take(facts_of(place.of).suspensions);
  if (is(Appoint())) return take(facts_of(place.of).appointments);
  if (is(Publish())) return take(at_grown(publications_, place.of));
  if (is(Lockout())) return take(at_grown(lockouts_, place.of));
  if (is(Change())) return take(at_grown(changes_, place.of));
}

template <class Fact>
NameId Known::about_of(const Fact& fact) {
  if constexpr (requires { fact.document; }) return fact.document;
  if constexpr (requires { fact.lesson; }) return fact.lesson;
  if constexpr (requires { fact.quiz; }) return fact.quiz;
  if constexpr (requires { fact.checkout; }) return fact.checkout;
  if constexpr (requires { fact.target; }) return fact.target;
  if constexpr (requires { fact.machine_class; }) return fact.machine_class;
  return no_name;
}

NameId Known::about(RecordNo no) const {
  const RecordPlace place = record_places_[no];
  if (Fact(Publish()).index() == place.kind || Fact(Change()).index() == place.kind) return place.of;
  if (place.of == no_name) return no_name;
  NameId about = no_name;
  // Looked through, not changed.
  const_cast<Known*>(this)->with_list(place, [&](const auto& list) {
    for (const auto& fact : list)
      if (fact.no == no) about = about_of(fact);
  });
  return about;
}

/// When something is over: by itself, or by the first that ends it and is not taken out.
void Known::set_end(RecordNo ended) {
  if (record_places_[ended].of == no_name) return;  // still to be taken in
  Instant first = forever;
  for (const End& end : ends_[ended])
    if (out_.count(end.no) == 0) first = std::min(first, end.at);
  const auto set = [&](auto& fact) { fact.span.to = std::min(fact.ends_by_itself, first); };
  const auto out = out_.find(ended);
  if (out != out_.end()) {
    std::visit(
        [&](auto& fact) {
          if constexpr (requires { fact.ends_by_itself; }) set(fact);
        },
        out->second);
    return;
  }
  with_list(record_places_[ended], [&](auto& list) {
    if constexpr (requires { list.front().ends_by_itself; }) {
      for (auto& fact : list)
        if (fact.no == ended) set(fact);
    }
  });
}

namespace {

/// Whether the record only ends another: a reinstatement, a dismissal, a release.
bool ends_another(RecordPlace place) {
  return place.kind == Fact(Reinstate()).index() || place.kind == Fact(Dismiss()).index() ||
         place.kind == Fact(Release()).index();
}

}  // namespace

void Known::take_out(RecordNo no) {
  const RecordPlace place = record_places_[no];
  if (ends_another(place)) {
    out_.emplace(no, KnownChange{record_ats_[no], no});
    if (place.of != no_name) set_end(place.of);
    return;
  }
  with_list(place, [&](auto& list) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const auto& fact) { return fact.no == no; });
    if (found == list.end()) return;  // an incident in which nobody operated anything
    out_.emplace(no, *found);
    list.erase(found);
  });
}

void Known::put_back(RecordNo no) {
  const auto out = out_.find(no);
  if (out == out_.end()) return;
  const AnyFact fact = out->second;
  out_.erase(out);
  const RecordPlace place = record_places_[no];
  if (ends_another(place)) {
    if (place.of != no_name) set_end(place.of);
    return;
  }
  with_list(place, [&](auto& list) {
    using OfList = typename std::decay_t<decltype(list)>::value_type;
    add(list, std::get<OfList>(fact));
  });
}

const CoverEnds& Known::ends(Period valid, std::optional<Period> grace) {
  for (const CoverEnds& each : cover_ends_)
    if (each.valid() == valid && each.grace() == grace) return each;
  return cover_ends_.emplace_back(zone_, valid, grace);
}

PersonFacts& Known::facts_of(NameId person) {
  if (person >= facts_.size()) facts_.resize(person + 1);
  if (!facts_[person]) facts_[person] = std::make_unique<PersonFacts>();
  return *facts_[person];
}

const PersonFacts& Known::facts(NameId person) const {
  static const PersonFacts none;
  return person < facts_.size() && facts_[person] ? *facts_[person] : none;
}

std::vector<TargetName> Known::targets() const {
  std::set<TargetName> targets;
  for (const Rulebook& rulebook : rulebooks_) {
    for (TargetName& target : targets_of(rulebook)) targets.insert(std::move(target));
  }
  return {targets.begin(), targets.end()};
}

void Known::set_machine(const Machine& machine) {
  machine_class_[names_.add(machine.id)] = add_target(machine.machine_class);
}

NameId Known::machine_class(NameId machine) const {
  const auto found = machine_class_.find(machine);
  return found == machine_class_.end() ? no_name : found->second;
}

}  // namespace wm
