#include "db/retention.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

#include "db/journal/subject.h"

namespace wm::db {
namespace {

/// Everybody a record names, in whatever part.
std::vector<PersonId> named_in(const AnyFact& fact) {
  std::vector<PersonId> named{subject_of(fact).person};
  if (const auto* done = as<Checkout>(fact)) named.push_back(done->assessor);
  if (const auto* scored = as<ScoredApart>(fact)) named.push_back(scored->assessor);
  if (const auto* witnessed = as<Witnessed>(fact)) named.push_back(witnessed->assessor);
  if (const auto* worked = as<Supervised>(fact)) named.push_back(worked->supervisor);
  if (const auto* started = as<Started>(fact); started && !started->supervisor.empty())
    named.push_back(started->supervisor);
  if (const auto* booked = as<Booking>(fact)) {
    named.push_back(booked->assessor);
    named.push_back(booked->second);
  }
  if (const auto* tag = as<Tag>(fact)) {
    named.push_back(tag->key_holder);
    named.push_back(tag->put_on_by);
  }
  if (const auto* taught = as<GroupTaught>(fact))
    named.insert(named.end(), taught->instructors.begin(), taught->instructors.end());
  if (const auto* visit = as<Visit>(fact)) named.push_back(visit->host);
  if (const auto* join = as<Join>(fact)) named.push_back(join->keep);
  return named;
}

/// Keys of machines that are out of service now.
std::set<PersonId> key_holders(const Store& store) {
  std::set<RecordId> over;
  for (const Entry& entry : store.entries())
    if (const auto* back = as<Release>(entry.fact); back && !entry.voided) over.insert(back->lockout);
  std::set<PersonId> holders;
  for (const Entry& entry : store.entries())
    if (const auto* tag = as<Tag>(entry.fact); tag && !entry.voided && !over.contains(tag->lockout))
      if (const Entry* lockout = store.entry(tag->lockout); lockout && !lockout->voided)
        for (const PersonId& id : {tag->key_holder, tag->put_on_by})
          if (!id.empty()) holders.insert(store.joined(id));
  return holders;
}

bool paused(Decider& decider, const PersonId& person, Instant now) {
  const auto targets = decider.targets();
  return std::ranges::any_of(targets, [&](const TargetName& target) {
    return !decider.standing(person, target, now).suspensions.empty();
  });
}

std::map<PersonId, Instant> last_named(const Store& store) {
  // By the ids that the records have: whom each counts for is asked once.
  std::unordered_map<PersonId, Instant> by_id;
  for (const Entry& entry : store.entries()) {
    if (entry.voided) continue;
    for (const PersonId& id : named_in(entry.fact)) {
      Instant& at = by_id.try_emplace(id, first_instant).first->second;
      at = std::max(at, entry.at);
    }
  }
  std::map<PersonId, Instant> last;
  for (const auto& [id, named] : by_id) {
    Instant& at = last.try_emplace(store.joined(id), first_instant).first->second;
    at = std::max(at, named);
  }
  return last;
}

/// From when on details may go that were named last at `last`; the last day that is kept is counted whole.
Instant goes_from(const Zone& zone, const Period& keep, Instant last) {
  return zone.start(end(zone.day(last), keep) + 1);
}

}  // namespace

std::vector<VisitMayGo> visits_that_may_go(Store& store) {
  const Rulebook* rulebook = store.current().decider().in_force(store.now());
  if (rulebook == nullptr || !rulebook->keep_details) return {};
  const Zone zone = Zone::named(store.details().zone).value_or(Zone::utc());
  std::vector<VisitMayGo> may_go;
  for (const Entry* entry : store.of_kind("visit")) {
    const std::string& name = as<Visit>(entry->fact)->name;
    const Instant since = goes_from(zone, *rulebook->keep_details, entry->at);
    if (!name.empty() && since <= store.now()) may_go.push_back({entry->id, name, entry->at, since});
  }
  std::ranges::stable_sort(may_go, {}, &VisitMayGo::since);
  return may_go;
}

std::vector<MayGo> details_that_may_go(Store& store) {
  Decider& decider = store.current().decider();
  const Instant now = store.now();
  const Rulebook* rulebook = decider.in_force(now);
  if (rulebook == nullptr || !rulebook->keep_details) return {};
  const Zone zone = Zone::named(store.details().zone).value_or(Zone::utc());
  const auto last = last_named(store);
  const auto holders = key_holders(store);
  std::vector<MayGo> may_go;
  for (const Person& person : store.people()) {
    const auto found = last.find(person.id);
    if (store.joined(person.id) != person.id || person == nameless(person.id) || found == last.end())
      continue;
    const Instant since = goes_from(zone, *rulebook->keep_details, found->second);
    if (since > now || store.role_of(person.id) || holders.contains(person.id)) continue;
    if (!paused(decider, person.id, now)) may_go.push_back({person.id, found->second, since});
  }
  std::ranges::stable_sort(may_go, {}, &MayGo::since);
  return may_go;
}

}  // namespace wm::db
