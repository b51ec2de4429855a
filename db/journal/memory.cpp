#include "db/journal/memory.h"

#include <algorithm>
#include <utility>

#include "core/sheet/sheet_text.h"
#include "core/teach/bank_text.h"
#include "db/refuse.h"

namespace wm::db {

void Memory::begin_commit(const Entry& entry, const PersonId& person) {
  last_order_ = entry.order;
  last_recorded_ = std::max(last_recorded_, entry.recorded);
  if (entry.commit == last_commit_) return;
  last_commit_ = entry.commit;
  commits_.emplace(entry.id, CommitLine{entry.commit, person});
}

void Memory::make_room(std::size_t entries) {
  entries_.reserve(entries);
  commits_.reserve(entries);
  entry_at_.reserve(entries);
}

void Memory::add_entry(Entry entry) {
  const bool personal = as<Details>(entry.fact) != nullptr || as<PinChosen>(entry.fact) != nullptr ||
                        as<Erased>(entry.fact) != nullptr;
  begin_commit(entry, personal ? subject_of(entry.fact).person : PersonId());
  entries_.push_back(std::move(entry));
  index(entries_.size() - 1);
}

void Memory::skip(const Entry& entry) { begin_commit(entry, {}); }

void Memory::index(std::size_t position) {
  const Entry& entry = entries_[position];
  entry_at_.emplace(entry.id, position);
  kinds_[std::string(any_kind_word(entry.fact))].push_back(position);
  const Subject subject = subject_of(entry.fact);
  if (!subject.refers_to.empty()) references_[subject.refers_to].push_back(position);
  // The marks of a check-out are about it, and end the sheet that was in hand.
  if (const auto* f = as<SheetMarks>(entry.fact); f && !f->opened.empty())
    references_[f->opened].push_back(position);
  if (const auto* f = as<Supervised>(entry.fact)) {
    sessions_[f->person].push_back(position);
    if (f->supervisor != f->person) sessions_[f->supervisor].push_back(position);
  }
  if (const auto* f = as<Publish>(entry.fact)) publications_[f->item].push_back(position);
  if (const auto* f = as<Lockout>(entry.fact)) lockouts_[f->machine].push_back(position);
  if (const auto* f = as<MachineAdded>(entry.fact)) machines_[f->machine].push_back(position);
  if (as<Started>(entry.fact) != nullptr) open_starts_.insert(position);
  if (const auto* f = as<Left>(entry.fact)) set_start(f->started, false);
  if (const auto* f = as<StrikeOut>(entry.fact)) strike_out(*f, entry.at);
  if (const auto* f = as<Details>(entry.fact)) set_person(*f, position);
  if (as<PinChosen>(entry.fact) != nullptr) set_pin(position);
}

void Memory::strike_out(const StrikeOut& fact, Instant at) {
  const auto found = entry_at_.find(fact.record);
  if (found == entry_at_.end()) return;  // what was blanked is not in memory
  Entry& entry = entries_[found->second];
  entry.voided = at;
  if (as<RulebookIssued>(entry.fact) != nullptr) list_rulebooks();
  if (as<Started>(entry.fact) != nullptr) open_starts_.erase(found->second);
  if (const auto* f = as<Left>(entry.fact)) set_start(f->started, true);
}

void Memory::set_start(const RecordId& started, bool open) {
  const auto found = entry_at_.find(started);
  if (found == entry_at_.end()) return;
  open_starts_.erase(found->second);
  if (open && !entries_[found->second].voided) open_starts_.insert(found->second);
}

void Memory::add_rulebook(Rulebook rulebook) {
  issued_.push_back({entries_.back().id, std::move(rulebook)});
  list_rulebooks();
}

void Memory::list_rulebooks() {
  rulebooks_.clear();
  for (const IssuedRulebook& issued : issued_)
    if (!find(issued.record)->voided) rulebooks_.push_back(issued.rulebook);
}

void Memory::set_person(const Details& details, std::size_t position) {
  const auto [found, added] = person_at_.emplace(details.person, people_.size());
  if (added) {
    people_.push_back(details.details);
    people_since_.push_back(entries_[position].recorded);
    details_at_.push_back({position});
  } else {
    people_[found->second] = details.details;
    details_at_[found->second].push_back(position);
  }
  if (!details.details.number.empty()) numbers_[details.details.number].push_back(found->second);
  if (!details.details.card.empty()) cards_[details.details.card].push_back(found->second);
}

const Person* Memory::other_with(const std::unordered_map<std::string, Positions>& had,
                                 std::string Person::*field, const Person& person) const {
  for (const std::size_t i : at(had, person.*field))
    if (people_[i].id != person.id && people_[i].*field == person.*field) return &people_[i];
  return nullptr;
}

const Person* Memory::other_with_number(const Person& person) const {
  return other_with(numbers_, &Person::number, person);
}

const Person* Memory::other_with_card(const Person& person) const {
  return other_with(cards_, &Person::card, person);
}

void Memory::set_pin(std::size_t position) {
  PinChosen pin = *as<PinChosen>(entries_[position].fact);
  pins_[pin.person].emplace_back(position, std::exchange(pin.kept, {}));
  entries_[position].fact = ShopFact(std::move(pin));
}

void Memory::back_to(const Mark& mark) {
  Memory old;
  old.commits_ = std::move(commits_);
  std::erase_if(old.commits_, [&](const auto& commit) { return commit.second.number > mark.commit; });
  for (const auto& [person, pins] : pins_)
    for (const auto& [position, kept] : pins)
      entries_[position].fact =
          ShopFact(PinChosen{person, as<PinChosen>(entries_[position].fact)->key, kept});
  auto issued = issued_.begin();
  for (std::size_t i = 0; i < mark.entries; ++i) {
    Entry entry = std::move(entries_[i]);
    entry.voided.reset();  // said again by the strike-outs that stay
    const bool rulebook = as<RulebookIssued>(entry.fact) != nullptr;
    old.add_entry(std::move(entry));
    if (rulebook) old.add_rulebook(std::move((issued++)->rulebook));
  }
  old.last_commit_ = mark.commit;
  old.last_order_ = mark.order;
  old.last_recorded_ = mark.recorded;
  *this = std::move(old);
}

const CommitLine* Memory::commit_of(const std::string& command) const {
  const auto found = commits_.find(command);
  return found == commits_.end() ? nullptr : &found->second;
}

RecordId Memory::pin_of(const PersonId& id) const {
  const auto found = pins_.find(id);
  return found == pins_.end() ? "" : entries_[found->second.back().first].id;
}

std::vector<Entry> Memory::entries_of(std::int64_t commit) const {
  const auto by_commit = [](const Entry& e, std::int64_t n) { return e.commit < n; };
  auto i = std::lower_bound(entries_.begin(), entries_.end(), commit, by_commit);
  std::vector<Entry> found;
  for (; i != entries_.end() && i->commit == commit; ++i) found.push_back(*i);
  return found;
}

const Person* Memory::person(const PersonId& id) const {
  const auto found = person_at_.find(id);
  return found == person_at_.end() ? nullptr : &people_[found->second];
}

Instant Memory::person_since(const PersonId& id) const { return people_since_[person_at_.at(id)]; }

const Person* Memory::person_known(const PersonId& id, Instant known) const {
  const auto found = person_at_.find(id);
  if (found == person_at_.end()) return nullptr;
  const Person* then = nullptr;
  for (const std::size_t i : details_at_[found->second]) {
    const Person& details = as<Details>(entries_[i].fact)->details;
    if (entries_[i].recorded <= known || (then != nullptr && *then == nameless(id))) then = &details;
  }
  return then;
}

std::vector<const Entry*> Memory::details_of(const PersonId& id) const {
  std::vector<const Entry*> all;
  if (const auto found = person_at_.find(id); found != person_at_.end())
    for (const std::size_t i : details_at_[found->second]) all.push_back(&entries_[i]);
  return all;
}

std::string Memory::kept_pin(const PersonId& id) const {
  const auto found = pins_.find(id);
  return found == pins_.end() ? "" : found->second.back().second;
}

bool Memory::has_pin(const PersonId& id) const {
  return std::ranges::any_of(aliases(id), [&](const PersonId& alias) { return !kept_pin(alias).empty(); });
}

const Entry* Memory::find(const RecordId& id) const {
  const auto found = entry_at_.find(id);
  return found == entry_at_.end() ? nullptr : &entries_[found->second];
}

const Memory::Positions& Memory::of_kind(std::string_view kind) const {
  static const Positions none;
  const auto found = kinds_.find(kind);
  return found == kinds_.end() ? none : found->second;
}

const Issued* Memory::work(Work work, const std::string& name, int revision) const {
  for (const std::size_t i : of_kind("issued")) {
    const auto* issued = as<Issued>(entries_[i].fact);
    if (issued->work == work && issued->name == name && issued->revision == revision) return issued;
  }
  return nullptr;
}

Expected<const teach::Bank*> Memory::bank(const std::string& name, int revision) const {
  if (const auto read = banks_.find({name, revision}); read != banks_.end()) return &read->second;
  const Issued* issued = work(Work::bank, name, revision);
  if (issued == nullptr)
    return refuse("bank", "Revision " + std::to_string(revision) + " of '" + name + "' has not been issued.",
                  "Choose a bank that has been issued.");
  auto bank = teach::read_bank(issued->text);
  if (!bank) return tl::make_unexpected(bank.error().front());
  return &banks_.emplace(std::pair(name, revision), std::move(*bank)).first->second;
}

const Sheet* Memory::sheet(const std::string& name, int revision) const {
  if (const auto read = sheets_.find({name, revision}); read != sheets_.end()) return &read->second;
  const Issued* issued = work(Work::sheet, name, revision);
  auto sheet = issued == nullptr ? tl::unexpected(std::vector<Problem>()) : read_sheet(issued->text);
  return sheet ? &sheets_.emplace(std::pair(name, revision), std::move(*sheet)).first->second : nullptr;
}

std::string Memory::class_of_machine(const MachineId& id) const {
  std::string name;
  for (const std::size_t i : at(machines_, id))
    if (!entries_[i].voided) name = as<MachineAdded>(entries_[i].fact)->machine_class;
  return name;
}

std::string Memory::label_of_machine(const MachineId& id) const {
  std::string label;
  for (const std::size_t i : at(machines_, id))
    if (!entries_[i].voided) label = as<MachineAdded>(entries_[i].fact)->label;
  return label;
}

bool Memory::target_known(const TargetName& target) const {
  return std::any_of(rulebooks_.begin(), rulebooks_.end(), [&](const Rulebook& rulebook) {
    const MachineClass* known = find_class(rulebook, class_of(target));
    if (known == nullptr) return false;
    const std::size_t slash = target.find('/');
    return slash == std::string::npos || std::find(known->modes.begin(), known->modes.end(),
                                                   target.substr(slash + 1)) != known->modes.end();
  });
}

bool Memory::tier_known(int tier) const {
  return std::any_of(rulebooks_.begin(), rulebooks_.end(),
                     [&](const Rulebook& rulebook) { return find_tier(rulebook, tier) != nullptr; });
}

}  // namespace wm::db
