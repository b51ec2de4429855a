#pragma once
// The scenario file: a shop and questions about it in one JSON object, and the answers as lines of JSON.
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/problem.h"
#include "core/records/shop.h"

namespace wm {

struct AskStanding {
  PersonId person;
  TargetName target;
  Instant at;
};
struct AskTimeline {
  PersonId person;
  TargetName target;
  Instant from, to;
};
struct AskMayStart {
  PersonId person;
  MachineId machine;
  std::string mode;
  Instant at;
  bool staffed = false;
  std::vector<PersonId> present, busy;
};
struct AskWho {
  TargetName target;
  Instant at;
  Rung at_least = Rung::supervised;
};
struct AskAssessors {
  TargetName target;
  Instant at;
};
struct AskDrops {
  Instant from, to;
};
struct AskRestsOn {
  RecordId record;
  Instant at;
};
/// `rulebook` has the ask's `at` as its effective_from and recorded, and version 0.
struct AskWhatIf {
  Rulebook rulebook;
  Instant at;
};
struct AskRoute {
  PersonId person;
  TargetName target;
  Rung to = Rung::supervised;
  Instant at;
};

struct Ask {
  std::optional<Instant> known;
  std::variant<AskStanding, AskTimeline, AskMayStart, AskWho, AskAssessors, AskDrops, AskRestsOn, AskWhatIf,
               AskRoute>
      what;
};

struct Scenario {
  Shop shop;
  std::vector<Ask> asks;
};

/// Reads a scenario strictly. Every mistake found is in the list, each with the JSON pointer of the value
/// that is wrong (of the object where a field is missing; "line L, column C" where the text isn't JSON), in
/// the order of the file; a scenario comes back only where there is none.
tl::expected<Scenario, std::vector<Problem>> read_scenario(std::string_view json);

/// The answers to a scenario's asks in order, one line of JSON each, without line ends.
std::vector<std::string> answer(const Scenario& scenario);

}  // namespace wm
