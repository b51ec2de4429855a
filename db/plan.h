#pragma once
// What a command comes to, before anything is written.
#include <functional>
#include <optional>
#include <vector>

#include "db/check/case.h"
#include "db/command.h"

namespace wm::db {

struct Plan {
  std::vector<AnyFact> facts = {};  // in the order they are entered
  std::optional<Rulebook> rulebook = {};
};

/// What these come to whatever the shop is like. `record` as below.
std::vector<AnyFact> facts_of(const SignCheckout& a, const RecordId& record);
std::vector<AnyFact> facts_of(const PutOutOfService& a, const RecordId& record);
/// What a signature adds where the booking's turnout is not marked yet.
AnyFact arrival(const RecordId& booking);

/// How PINs are made and tested: the store's business.
struct PinDesk {
  std::function<Expected<std::string>(const std::string& pin)> hash;
  std::function<Expected<void>(const PersonId& person, const std::string& pin)> verify;
};

/// Checks the command against what is known and says what it would write. Permission has been asked for
/// before. `record` is the id that its first record will have.
Expected<Plan> plan(const Case& c, const Action& action, const RecordId& record, const PinDesk& pins);

}  // namespace wm::db
