#pragma once
// What a fuzzer says where something does not hold that must.
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <string_view>
#include <vector>

#include "core/json/writing.h"
#include "core/problem.h"

namespace wm::fuzz {

/// Ends the program where it is not so: libFuzzer then keeps the input, and a replay fails.
inline void holds(bool so, const char* what) {
  if (so) return;
  std::fprintf(stderr, "This does not hold: %s.\n", what);
  std::abort();
}

/// A refusal tells a person what is wrong and what to do, in text that can be shown.
inline void is_told(const Problem& problem) {
  holds(!problem.what.empty(), "a refusal says what is wrong");
  holds(!problem.remedy.empty(), "a refusal says what would be right");
  try {
    for (const auto& words : {problem.where, problem.what, problem.remedy}) json::in_quotes(words);
  } catch (const std::exception&) {
    holds(false, "a refusal is UTF-8");
  }
}
inline void is_told(const std::vector<Problem>& problems) {
  holds(!problems.empty(), "a refusal has a reason");
  for (const Problem& problem : problems) is_told(problem);
}

inline std::string_view text(const unsigned char* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

}  // namespace wm::fuzz
