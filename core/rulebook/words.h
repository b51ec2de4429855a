#pragma once
// The words that rulebooks use beside those of records.
#include <array>
#include <string_view>

#include "core/rulebook/rulebook.h"

namespace wm {

constexpr std::string_view word(RevisionRule rule) { return rule == RevisionRule::any ? "any" : "current"; }
constexpr std::string_view word(Supervision supervision) {
  return supervision == Supervision::assessor ? "assessor" : "independent";
}

constexpr std::string_view word(FourEyes what) {
  return what == FourEyes::reinstate ? "reinstate" : "strike_out";
}

inline std::string_view kind_word(const decltype(Requirement::need)& need) {
  static constexpr std::array<std::string_view, std::variant_size_v<decltype(Requirement::need)>> words = {
      "document",   "age",      "lesson",        "quiz",   "checkout", "practice",
      "recent_use", "standing", "tier_standing", "all_of", "any_of",   "some_of"};
  return words[need.index()];
}

inline std::string_view kind_word(const Condition& condition) {
  static constexpr std::array<std::string_view, std::variant_size_v<Condition>> words = {"staffed", "buddy"};
  return words[condition.index()];
}

}  // namespace wm
