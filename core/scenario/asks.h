#pragma once
// Reading the questions of a scenario.
#include <optional>
#include <vector>

#include "core/json/reading.h"
#include "core/scenario/scenario.h"

namespace wm {

/// The word that files use for what is asked ("may_start").
std::string_view ask_word(const decltype(Ask::what)& what);

/// What asks stand upon that the file says elsewhere.
struct AskContext {
  const Shop& shop;
  /// Rulebooks that are asked about; filled in, since they define names too.
  std::vector<Rulebook>& proposed;
  bool& names_known;
};
Ask read_ask(json::Reading& reading, json::Value value, AskContext context);

}  // namespace wm
