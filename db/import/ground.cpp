#include "db/import/ground.h"

#include <algorithm>

#include "db/import/plan.h"

namespace wm::db::import {
namespace {

std::string_view without_zeros(std::string_view number) {
  const std::size_t start = number.find_first_not_of('0');
  return start == number.npos ? std::string_view() : number.substr(start);
}

/// The one key of a map that fits, or nothing where none or several do.
template <class Map, class Fits>
std::optional<typename Map::const_iterator> only(const Map& map, Fits fits) {
  const auto found = std::find_if(map.begin(), map.end(), fits);
  if (found == map.end() || std::find_if(std::next(found), map.end(), fits) != map.end()) return std::nullopt;
  return found;
}

}  // namespace

Ground Ground::of(const Store& store) {
  Ground ground;
  ground.zone = Zone::named(store.details().zone).value_or(Zone::utc());
  ground.now = store.now();
  for (const Person& person : store.people()) ground.add(person);
  for (const Entry& entry : store.entries()) ground.add(entry.id, {entry.at, entry.fact});
  ground.rulebooks = store.rulebooks();
  return ground;
}

void Ground::add(const Person& person) {
  people[person.id] = person;
  if (!person.number.empty()) {
    if (!by_number.contains(person.number))
      by_bare_number.emplace(without_zeros(person.number), person.number);
    by_number[person.number] = person.id;
  }
  if (!person.card.empty()) by_card[person.card] = person.id;
}

void Ground::add(const RecordId& id, const KnownRecord& record) {
  records[id] = record;
  if (const auto* fact = std::get_if<Fact>(&record.fact)) {
    if (const auto* p = std::get_if<Publish>(fact)) published[p->item].try_emplace(p->revision, record.at);
    if (const auto* b = std::get_if<Birth>(fact)) born[b->person] = b->born;
  } else {
    const auto& shop_fact = std::get<ShopFact>(record.fact);
    if (const auto* m = std::get_if<MachineAdded>(&shop_fact)) machines[m->machine] = *m;
    if (const auto* s = std::get_if<StrikeOut>(&shop_fact)) struck_out.insert(s->record);
  }
}

void Ground::add(const Command& command) {
  const Instant at = command.at.value_or(now);
  if (const auto* enter = std::get_if<EnterPerson>(&command.action)) {
    add(enter->person);
    if (enter->born) born[enter->person.id] = *enter->born;
  } else if (const auto* fact = std::get_if<EnterFact>(&command.action)) {
    add(command.id, {at, fact->fact});
  } else if (const auto* shop_fact = std::get_if<EnterShopFact>(&command.action)) {
    add(command.id, {at, shop_fact->fact});
  } else if (const auto* signature = std::get_if<SignCheckout>(&command.action)) {
    add(command.id, {at, Fact(signature->checkout)});
  } else if (const auto* strike = std::get_if<StrikeOutRecord>(&command.action)) {
    struck_out.insert(strike->record);
  } else if (const auto* rulebook = std::get_if<PublishRulebook>(&command.action)) {
    rulebooks.push_back(rulebook->rulebook);
  }
}

void Ground::add(const ImportPlan& plan) {
  for (const Command& command : plan.commands) add(command);
}

std::optional<PersonId> Ground::person_numbered(std::string_view number) const {
  if (const auto exact = by_number.find(std::string(number)); exact != by_number.end()) return exact->second;
  const std::string_view bare = without_zeros(number);
  if (bare.empty() || by_bare_number.count(bare) != 1) return std::nullopt;
  return by_number.at(by_bare_number.find(bare)->second);
}

std::optional<MachineId> Ground::machine_named(std::string_view name) const {
  if (machines.contains(std::string(name))) return std::string(name);
  const auto found = only(machines, [&](const auto& pair) { return pair.second.label == name; });
  return found ? std::optional((*found)->first) : std::nullopt;
}

bool Ground::is_class(std::string_view name) const {
  return std::any_of(rulebooks.begin(), rulebooks.end(),
                     [&](const Rulebook& r) { return find_class(r, name); });
}

bool Ground::is_target(std::string_view name) const {
  return is_class(name) || std::any_of(rulebooks.begin(), rulebooks.end(), [&](const Rulebook& rulebook) {
           const std::vector<TargetName> targets = targets_of(rulebook);
           return std::find(targets.begin(), targets.end(), name) != targets.end();
         });
}

bool Ground::is_tier(int tier) const {
  return std::any_of(rulebooks.begin(), rulebooks.end(),
                     [&](const Rulebook& r) { return find_tier(r, tier); });
}

}  // namespace wm::db::import
