#pragma once
// What a file's rows may refer to: the shop as it is, and what earlier files of the same import will add.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "db/store.h"

namespace wm::db::import {

struct ImportPlan;

/// A record that is here or will be.
struct KnownRecord {
  Instant at;
  std::variant<Fact, ShopFact> fact;
};

struct Ground {
  Zone zone = Zone::utc();
  Instant now;
  std::map<PersonId, Person> people;
  std::map<std::string, PersonId> by_number;
  std::multimap<std::string, std::string, std::less<>> by_bare_number;  // without leading zeros, as written
  std::map<std::string, PersonId> by_card;
  std::map<RecordId, KnownRecord> records;
  std::set<RecordId> struck_out;
  std::map<MachineId, MachineAdded> machines;
  std::vector<Rulebook> rulebooks;
  std::map<std::string, std::map<int, Instant>> published;  // item, revision, when
  std::map<PersonId, Day> born;

  static Ground of(const Store& store);

  void add(const Person& person);
  void add(const RecordId& id, const KnownRecord& record);
  void add(const Command& command);
  /// What a plan will add, for the files that come after it.
  void add(const ImportPlan& plan);

  /// By number as written, or with other leading zeros (spreadsheets drop them) where one person alone fits.
  std::optional<PersonId> person_numbered(std::string_view number) const;
  /// By a unit's own name, or by its label where one unit alone has it.
  std::optional<MachineId> machine_named(std::string_view name) const;
  bool is_class(std::string_view name) const;
  /// A class or `class/mode` of any rulebook.
  bool is_target(std::string_view name) const;
  bool is_tier(int tier) const;
};

}  // namespace wm::db::import
