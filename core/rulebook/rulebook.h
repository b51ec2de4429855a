#pragma once
// A shop's rules: tiers, machine classes with their modes, and the gates that guard each rung.
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/records/record.h"
#include "core/time/period.h"

namespace wm {

struct Requirement;

/// Which revision of a lesson, quiz or check-out a rule asks for.
enum class RevisionRule { any, current };

struct Retry {
  std::optional<int> wait_hours;  // 1 to 10^5
  std::optional<int> most;        // with in_hours
  std::optional<int> in_hours;
  friend bool operator==(const Retry&, const Retry&) = default;
};

struct NeedDocument {
  std::string document;
  std::optional<Period> valid, grace;
  friend bool operator==(const NeedDocument&, const NeedDocument&) = default;
};
struct NeedAge {
  int years = 18;
  friend bool operator==(const NeedAge&, const NeedAge&) = default;
};
struct NeedLesson {
  std::string lesson;
  RevisionRule revision = RevisionRule::current;
  std::optional<Period> changeover, valid, grace;
  friend bool operator==(const NeedLesson&, const NeedLesson&) = default;
};
struct NeedQuiz {
  std::string quiz;
  int pass_percent = 80;
  RevisionRule revision = RevisionRule::current;
  std::optional<Period> changeover, valid, grace;
  std::optional<Retry> retry;
  friend bool operator==(const NeedQuiz&, const NeedQuiz&) = default;
};
struct NeedCheckout {
  std::string checkout;
  RevisionRule revision = RevisionRule::any;
  std::optional<Period> changeover, valid, grace;
  std::vector<Requirement> given;
  std::optional<int> renew_after_severity;  // 1 to 3
  bool renew_after_change = false;
  friend bool operator==(const NeedCheckout&, const NeedCheckout&) = default;
};
struct NeedPractice {
  std::optional<TargetName> target;
  std::optional<int> minutes, sessions;
  std::optional<Period> within;
  friend bool operator==(const NeedPractice&, const NeedPractice&) = default;
};
struct NeedRecentUse {
  std::optional<TargetName> target;
  int count = 1;
  Period within;
  friend bool operator==(const NeedRecentUse&, const NeedRecentUse&) = default;
};
struct NeedStanding {
  TargetName target;
  Rung at_least = Rung::supervised;
  friend bool operator==(const NeedStanding&, const NeedStanding&) = default;
};
struct NeedTierStanding {
  int tier = 1;
  Rung at_least = Rung::supervised;
  std::optional<int> count;  // nothing: "all"
  friend bool operator==(const NeedTierStanding&, const NeedTierStanding&) = default;
};
struct NeedAllOf {
  std::vector<Requirement> of;
  friend bool operator==(const NeedAllOf&, const NeedAllOf&) = default;
};
struct NeedAnyOf {
  std::vector<Requirement> of;
  friend bool operator==(const NeedAnyOf&, const NeedAnyOf&) = default;
};
struct NeedSomeOf {
  int count = 1;
  std::vector<Requirement> of;
  friend bool operator==(const NeedSomeOf&, const NeedSomeOf&) = default;
};

struct Requirement {
  std::variant<NeedDocument, NeedAge, NeedLesson, NeedQuiz, NeedCheckout, NeedPractice, NeedRecentUse,
               NeedStanding, NeedTierStanding, NeedAllOf, NeedAnyOf, NeedSomeOf>
      need;
  friend bool operator==(const Requirement&, const Requirement&) = default;
};

/// A requirement with the rung that it guards. `existing_until` spares those who were there before.
struct Gate {
  std::string id;
  Rung guards = Rung::supervised;  // "for"
  Requirement need;
  std::optional<Day> existing_until;
  friend bool operator==(const Gate&, const Gate&) = default;
};

struct Staffed {
  friend bool operator==(const Staffed&, const Staffed&) = default;
};
struct Buddy {
  int count = 1;
  Rung at_least = Rung::supervised;
  friend bool operator==(const Buddy&, const Buddy&) = default;
};
using Condition = std::variant<Staffed, Buddy>;

/// Who may supervise: anyone independent on the machine, or only who is able to assess it.
enum class Supervision { independent, assessor };

struct Tier {
  int tier = 1;
  std::vector<Gate> gates;
  std::vector<Condition> conditions;
  Supervision supervision = Supervision::independent;
  bool other_checks_out = false;  // who taught somebody on one of its machines does not check them out there
  bool two_assessors = false;     // a check-out on one of its machines is witnessed and signed by two
  int supervises_at_once = 1;     // how many people at its machines one supervisor takes at a time, 1 to 20
  friend bool operator==(const Tier&, const Tier&) = default;
};

struct MachineClass {
  std::string name;
  int tier = 1;
  std::vector<std::string> modes;
  std::vector<Gate> gates;
  std::map<std::string, std::vector<Gate>> mode_gates;
  std::vector<Condition> conditions;
  Supervision supervision = Supervision::independent;
  friend bool operator==(const MachineClass&, const MachineClass&) = default;
};

/// What one person alone may not do: lift a suspension, strike out a signed check-out.
enum class FourEyes { reinstate, strike_out };

/// `four_eyes`, `close_may_sign`, `learners_to_one` and a tier's `other_checks_out`, `two_assessors` and
/// `supervises_at_once` say who may enter what, `keep_details` what may be erased; no standing rests on them.
struct Rulebook {
  int version = 1;
  Instant effective_from;
  Instant recorded;
  std::vector<Tier> tiers;
  std::vector<MachineClass> classes;
  std::vector<FourEyes> four_eyes = {};  // each once
  bool close_may_sign = true;            // whether an assessor signs for whom they have named as close
  /// How long people's details are kept after the last record that names them; nothing: as long as the shop.
  std::optional<Period> keep_details = {};
  /// How many people one instructor teaches in a group at most, 1 to 100; nothing: any number.
  std::optional<int> learners_to_one = {};
  friend bool operator==(const Rulebook&, const Rulebook&) = default;
};

/// The targets of a rulebook, sorted: every class without modes, every `class/mode`.
std::vector<TargetName> targets_of(const Rulebook& rulebook);
const MachineClass* find_class(const Rulebook& rulebook, std::string_view name);
const Tier* find_tier(const Rulebook& rulebook, int tier);
/// The gates of a target: its tier's, its class's and its mode's, in order of id. Empty where it is no
/// target.
std::vector<const Gate*> gates_of(const Rulebook& rulebook, std::string_view target);

}  // namespace wm
