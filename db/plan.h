#pragma once
// What a command comes to, before anything is written.
#include <functional>
#include <optional>
#include <vector>

#include "db/check/case.h"
#include "db/command.h"

namespace wm::db {

/// Who signs what a command enters. `chosen`: the PIN's record, where the key had to be made anew.
struct Signer {
  PersonId person;
  ledger::SigningKey key;
  std::optional<PinChosen> chosen;
};

struct Plan {
  std::vector<AnyFact> facts = {};  // in the order they are entered
  std::optional<Rulebook> rulebook = {};
  std::optional<Signer> countersigner = {};  // signs before the second
  std::optional<Signer> second = {};         // signs before the signer
  std::optional<Signer> signer = {};
  std::optional<Instant> since = {};  // when what comes after the first happened; nothing: with it
};

/// What these come to whatever the shop is like. `record` as below.
std::vector<AnyFact> facts_of(const SignCheckout& a, const RecordId& record);
std::vector<AnyFact> facts_of(const EnterPaperSheet& a, const RecordId& record);
std::vector<AnyFact> facts_of(const PutOutOfService& a, const RecordId& record);
std::vector<AnyFact> facts_of(const RecordIncident& a, const RecordId& record);
std::vector<AnyFact> facts_of(const RecordChange& a, const RecordId& record);
std::vector<AnyFact> facts_of(const TeachGroup& a, const RecordId& record);
/// The id of a command's record at that place, from 0 on.
RecordId record_at(const RecordId& first, std::size_t place);

/// How PINs are made and tested: the store's business.
struct PinDesk {
  std::function<Expected<PinChosen>(const PersonId& person, const std::string& pin)> choose;
  /// Refuses a wrong PIN. Nothing where nobody signs: history that makes a new shop.
  std::function<Expected<std::optional<Signer>>(const PersonId& person, const std::string& pin)> signer;
};

/// Checks the command against what is known and says what it would write. Permission has been asked for
/// before. `record` is the id that its first record will have.
Expected<Plan> plan(const Case& c, const Action& action, const RecordId& record, const PinDesk& pins);

}  // namespace wm::db
