#pragma once
// All that the store holds, in memory, with the ways to find it that checks and answers need.
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/sheet/sheet.h"
#include "core/teach/bank.h"
#include "core/time/zone.h"
#include "db/journal/subject.h"
#include "db/store.h"

namespace wm::db {

/// A command carried out.
struct CommitLine {
  std::int64_t number = 0;
  PersonId person;
};

/// Filled in the order of the file; positions are places in `entries`.
class Memory {
 public:
  using Positions = std::vector<std::size_t>;

  const std::vector<Entry>& entries() const { return entries_; }
  const std::vector<Person>& people() const { return people_; }
  /// Those not struck out, in order.
  const std::vector<Rulebook>& rulebooks() const { return rulebooks_; }
  std::int64_t last_commit() const { return last_commit_; }
  std::int64_t last_order() const { return last_order_; }
  Instant last_recorded() const { return last_recorded_; }

  /// For that many entries in all: none is moved then as they are added.
  void make_room(std::size_t entries);
  void add_entry(Entry entry);
  /// A record whose content has been blanked takes its place in the order and is left out; it has no fact.
  void skip(const Entry& entry);
  /// The rulebook goes with the entry RulebookIssued that was added last.
  void add_rulebook(Rulebook rulebook);

  /// A point to go back to.
  struct Mark {
    std::int64_t commit = 0, order = 0;
    Instant recorded;
    std::size_t entries = 0;
  };
  Mark mark() const { return {last_commit_, last_order_, last_recorded_, entries_.size()}; }
  /// Forgets all that was added since: what was read or entered in a transaction that failed.
  /// Asks no disk, since that may be what failed.
  void back_to(const Mark& mark);

  const CommitLine* commit_of(const std::string& command) const;
  std::vector<Entry> entries_of(std::int64_t commit) const;
  const Person* person(const PersonId& id) const;
  /// As known then; null where nobody of that id was. Where those details have been blanked by themselves,
  /// those that took their place: whoever lost a name is not called by it again.
  const Person* person_known(const PersonId& id, Instant known) const;
  /// The records of somebody's details, in order; at least one of whoever is known.
  std::vector<const Entry*> details_of(const PersonId& id) const;
  Instant person_since(const PersonId& id) const;
  /// Somebody else who has this number, or this card, now; null where nobody has, and where it is empty.
  const Person* other_with_number(const Person& person) const;
  const Person* other_with_card(const Person& person) const;
  /// What the person's PIN is tested by; empty where they have none.
  std::string kept_pin(const PersonId& id) const;
  /// Whether any of those who count as the same person has one.
  bool has_pin(const PersonId& id) const;
  /// The record of the person's latest PIN; empty where they have none.
  RecordId pin_of(const PersonId& id) const;
  const Entry* find(const RecordId& id) const;
  /// A record of this kind that is not struck out.
  template <class F>
  const F* live(const RecordId& id) const {
    const Entry* entry = find(id);
    return entry == nullptr || entry->voided ? nullptr : as<F>(entry->fact);
  }
  /// The latest record of this kind that refers to another and counts, as known then.
  template <class F>
  const Entry* about(const RecordId& id, std::optional<Instant> known = {}) const {
    const Entry* found = nullptr;
    for (const std::size_t i : at(references_, id))
      if (counts(entries_[i], known) && as<F>(entries_[i].fact) != nullptr) found = &entries_[i];
    return found;
  }
  /// All of them, in order.
  template <class F>
  std::vector<const Entry*> all_about(const RecordId& id, std::optional<Instant> known = {}) const {
    std::vector<const Entry*> found;
    for (const std::size_t i : at(references_, id))
      if (counts(entries_[i], known) && as<F>(entries_[i].fact) != nullptr) found.push_back(&entries_[i]);
    return found;
  }
  /// Records that refer to another, of whatever kind, struck out or not, in order.
  const Positions& referring_to(const RecordId& id) const { return at(references_, id); }
  /// Records of a kind, struck out or not, in order.
  const Positions& of_kind(std::string_view kind) const;
  /// Supervised sessions that somebody was in, as either side.
  const Positions& sessions_of(const PersonId& id) const { return at(sessions_, id); }
  /// Machines started that have not been left, and were not struck out.
  const std::set<std::size_t>& open_starts() const { return open_starts_; }
  const Positions& publications_of(const std::string& item) const { return at(publications_, item); }
  const Positions& lockouts_of(const MachineId& id) const { return at(lockouts_, id); }
  /// The class, and the label, of a machine as added last; empty where there is no such machine.
  std::string class_of_machine(const MachineId& id) const;
  std::string label_of_machine(const MachineId& id) const;
  /// A question bank, by its text as it was issued in that revision; read once. Refuses what was not issued.
  Expected<const teach::Bank*> bank(const std::string& name, int revision) const;
  /// A run sheet, by its text as it was issued in that revision; read once. Null where it was not issued.
  const Sheet* sheet(const std::string& name, int revision) const;
  /// Whether any rulebook has it as a target or a class.
  bool target_known(const TargetName& target) const;
  bool tier_known(int tier) const;

  PersonId joined(const PersonId& id, std::optional<Instant> known = std::nullopt) const;
  /// Everybody that counts as the same person, themselves included.
  std::vector<PersonId> aliases(const PersonId& id) const;
  /// The role at t, by all that is known or by what was known then.
  std::optional<Role> role(const PersonId& id, Instant t, std::optional<Instant> known = std::nullopt) const;
  /// Everybody who is a manager at t, by whom they count for.
  std::vector<PersonId> managers(Instant t) const;
  /// What to call somebody in a sentence.
  std::string name(const PersonId& id) const;

  struct IssuedRulebook {
    RecordId record;
    Rulebook rulebook;
  };
  const std::vector<IssuedRulebook>& issued() const { return issued_; }

 private:
  template <class Map>
  static const Positions& at(const Map& map, const std::string& key) {
    static const Positions none;
    const auto found = map.find(key);
    return found == map.end() ? none : found->second;
  }
  const Person* other_with(const std::unordered_map<std::string, Positions>& had, std::string Person::*field,
                           const Person& person) const;
  void index(std::size_t position);
  void begin_commit(const Entry& entry, const PersonId& person);
  void set_person(const Details& details, std::size_t position);
  void set_pin(std::size_t position);
  void strike_out(const StrikeOut& fact, Instant at);
  void set_start(const RecordId& started, bool open);
  void list_rulebooks();

  std::vector<Entry> entries_;
  std::vector<Person> people_;
  std::vector<Instant> people_since_;
  std::unordered_map<std::string, Positions> numbers_, cards_;  // of the people who ever had it
  std::vector<Positions> details_at_;                           // of the people, in their order
  std::vector<IssuedRulebook> issued_;
  std::vector<Rulebook> rulebooks_;
  std::int64_t last_commit_ = 0, last_order_ = 0;
  Instant last_recorded_ = first_instant;
  std::unordered_map<std::string, CommitLine> commits_;
  std::unordered_map<PersonId, std::size_t> person_at_;
  std::unordered_map<PersonId, std::vector<std::pair<std::size_t, std::string>>>
      pins_;  // where, and what it is tested by
  std::unordered_map<RecordId, std::size_t> entry_at_;
  std::unordered_map<std::string, Positions> references_, sessions_, publications_, lockouts_, machines_;
  std::map<std::string, Positions, std::less<>> kinds_;
  std::set<std::size_t> open_starts_;
  const Issued* work(Work work, const std::string& name, int revision) const;
  mutable std::map<std::pair<std::string, int>, teach::Bank> banks_;  // those that were asked for
  mutable std::map<std::pair<std::string, int>, Sheet> sheets_;
};

}  // namespace wm::db
