#pragma once
// Reading the questions of a scenario.
#include <string_view>
#include <vector>

#include "core/json/reading.h"
#include "core/scenario/scenario.h"

namespace wm {

/// The word that files use for what is asked ("may_start").
std::string_view ask_word(const decltype(Ask::what)& what);

/// What questions add to what the file says elsewhere: rulebooks that are asked about define names too.
struct AskContext {
  std::vector<Rulebook>& proposed;
  bool& names_known;  // becomes false where not all names of a proposed rulebook could be read
};
Ask read_ask(json::Reading& reading, json::Value value, AskContext context);

}  // namespace wm
