#pragma once
// What went wrong, where, and what would be right: the one way in which a mistake of a user is told.
#include <string>
#include <tl/expected.hpp>

namespace wm {

/// A mistake that a person can put right. `where` is a place they can find (a JSON pointer, a line of a
/// file, a field); `what` says what is wrong there; `remedy` what would be right. Sentences, no full stop
/// inside `where`.
struct Problem {
  std::string where;
  std::string what;
  std::string remedy;
  friend bool operator==(const Problem&, const Problem&) = default;
};

template <class T>
using Expected = tl::expected<T, Problem>;

}  // namespace wm
