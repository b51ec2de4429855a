#include "core/decide/known.h"

#include <algorithm>
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

template <class Map>
const typename Map::mapped_type& or_empty(const Map& map, NameId key) {
  static const typename Map::mapped_type empty{};
  const auto found = map.find(key);
  return found == map.end() ? empty : found->second;
}

}  // namespace

Known::Known(const Shop& shop, std::optional<Instant> known) : zone_(shop.zone) {
  // Records are numbered in order of (at, id), so that sorting by number is sorting by time.
  std::vector<const Record*> records;
  for (const Record& record : shop.records) {
    if (exists(record, known)) records.push_back(&record);
  }
  std::sort(records.begin(), records.end(),
            [](const Record* a, const Record* b) { return std::tie(a->at, a->id) < std::tie(b->at, b->id); });
  for (const Rulebook& rulebook : shop.rulebooks) {
    if (!known || rulebook.recorded <= *known) rulebooks_.push_back(rulebook);
  }
  for (const Machine& machine : shop.machines) {
    machine_class_[names_.add(machine.id)] = add_target(machine.machine_class);
  }
  std::vector<PersonId> people = shop.people;
  std::sort(people.begin(), people.end());
  for (const PersonId& person : people) people_.push_back(names_.add(person));

  for (const Record* record : records) {
    const auto end = [&](const RecordId& ended) {
      const auto [place, fresh] = ended_.emplace(ended, record->at);
      if (!fresh) place->second = std::min(place->second, record->at);
    };
    if (const auto* reinstate = std::get_if<Reinstate>(&record->fact)) end(reinstate->suspension);
    if (const auto* dismiss = std::get_if<Dismiss>(&record->fact)) end(dismiss->appointment);
    if (const auto* release = std::get_if<Release>(&record->fact)) end(release->lockout);
  }
  record_ids_.reserve(records.size());
  record_ats_.reserve(records.size());
  for (const Record* record : records) {
    record_ids_.push_back(record->id);
    record_ats_.push_back(record->at);
    take(*record, static_cast<RecordNo>(record_ids_.size() - 1));
  }
  sort();
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

void Known::take(const Record& record, RecordNo no) {
  const Instant at = record.at;
  const auto person = [&](const PersonId& id) -> PersonFacts& { return facts_[names_.add(id)]; };
  const auto ended = [&](Instant by_itself) {
    const auto found = ended_.find(record.id);
    return found == ended_.end() ? by_itself : std::min(by_itself, found->second);
  };
  struct Take {
    Known& k;
    Instant at, recorded;
    RecordNo no;
    decltype(person)& facts;
    decltype(ended)& end;
    void operator()(const Birth& r) { facts(r.person).births.push_back({at, recorded, r.born, no}); }
    void operator()(const Document& r) {
      facts(r.person).documents.push_back({at, k.names_.add(r.document), k.after(r.until), no});
    }
    void operator()(const Lesson& r) {
      facts(r.person).lessons.push_back({at, k.names_.add(r.lesson), r.revision, no});
    }
    void operator()(const Quiz& r) {
      facts(r.person).quizzes.push_back(
          {at, k.names_.add(r.quiz), r.revision, r.correct, r.total, r.critical_missed, no});
    }
    void operator()(const Checkout& r) {
      facts(r.person).checkouts.push_back(
          {at, k.names_.add(r.checkout), r.revision, r.outcome, k.names_.add(r.assessor), no});
    }
    void operator()(const Supervised& r) {
      facts(r.person).supervised.push_back(
          {at, k.add_target(r.target), r.minutes, k.names_.add(r.supervisor), no});
    }
    void operator()(const Use& r) { facts(r.person).uses.push_back({at, k.add_target(r.target), no}); }
    void operator()(const Incident& r) {
      if (r.part != Part::operating) return;
      facts(r.person).incidents.push_back({at, k.class_of(k.add_target(r.target)), r.severity, no});
    }
    void operator()(const Suspend& r) {
      facts(r.person).suspensions.push_back({{at, end(k.after(r.until))}, k.scope(r.scope), no});
    }
    void operator()(const Appoint& r) {
      facts(r.person).appointments.push_back({{at, end(k.after(r.until))}, k.scope(r.scope), r.founding, no});
    }
    void operator()(const Publish& r) { k.publications_[k.names_.add(r.item)].push_back({at, r.revision}); }
    void operator()(const Lockout& r) {
      k.lockouts_[k.names_.add(r.machine)].push_back({{at, end(forever)}, no});
    }
    void operator()(const Change& r) { k.changes_[k.add_target(r.target)].push_back(at); }
    void operator()(const Reinstate&) {}
    void operator()(const Dismiss&) {}
    void operator()(const Release&) {}
  };
  std::visit(Take{*this, at, record.recorded, no, person, ended}, record.fact);
}

void Known::sort() {
  const auto by_name = [](auto& facts, auto name) {
    std::stable_sort(facts.begin(), facts.end(),
                     [name](const auto& a, const auto& b) { return a.*name < b.*name; });
  };
  for (auto& [person, facts] : facts_) {
    std::stable_sort(facts.births.begin(), facts.births.end(), [](const KnownBirth& a, const KnownBirth& b) {
      return std::tie(a.at, a.recorded) < std::tie(b.at, b.recorded);
    });
    by_name(facts.documents, &KnownDocument::document);
    by_name(facts.lessons, &KnownLesson::lesson);
    by_name(facts.quizzes, &KnownQuiz::quiz);
    by_name(facts.checkouts, &KnownCheckout::checkout);
  }
}

const PersonFacts& Known::facts(NameId person) const { return or_empty(facts_, person); }
const std::vector<Publication>& Known::publications(NameId item) const {
  return or_empty(publications_, item);
}
const std::vector<Instant>& Known::changes(NameId target) const { return or_empty(changes_, target); }
const std::vector<KnownLockout>& Known::lockouts(NameId machine) const {
  return or_empty(lockouts_, machine);
}

NameId Known::machine_class(NameId machine) const {
  const auto found = machine_class_.find(machine);
  return found == machine_class_.end() ? no_name : found->second;
}

}  // namespace wm
