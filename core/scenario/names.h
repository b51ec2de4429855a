#pragma once
// What the names in a scenario stand for.
#include <map>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/json/reading.h"
#include "core/scenario/scenario.h"

namespace wm {

class DefinedNames {
 public:
  /// `proposed` are the rulebooks that are asked about. Where not all names of the rulebooks are known, those
  /// that only rulebooks can define are not looked up.
  DefinedNames(const json::NameScope& scope, const std::vector<Rulebook>& rulebooks,
               const std::vector<Rulebook>& proposed, bool rulebooks_known);

  /// Finds fault with every name that is used in the text and nowhere defined.
  void check(json::Reading& reading) const;
  /// Finds fault with a mode that the machine's class has in no rulebook, and with none where it needs one.
  void check_mode(json::Reading& reading, json::Value value, const AskMayStart& ask,
                  const std::vector<Machine>& machines) const;

 private:
  using Set = std::unordered_set<std::string>;
  void add(const Rulebook& rulebook);
  bool is_defined(const json::Named& use) const;

  std::map<json::Names, Set> defined_;
  bool rulebooks_known_;
};

}  // namespace wm
