#pragma once
// Reading a rulebook that stands inside a larger text.
#include "core/json/reading.h"
#include "core/rulebook/rulebook.h"

namespace wm {

struct RulebookRead {
  Rulebook rulebook;  // may be used where reading it brought up no mistake
  bool names_known;   // whether every tier, class and mode that it defines could be read
};

/// With version and dates.
RulebookRead read_rulebook(json::Reading& reading, json::Value value);
/// The rules alone, as in "what if these were in force?".
RulebookRead read_rules(json::Reading& reading, json::Value value);

}  // namespace wm
