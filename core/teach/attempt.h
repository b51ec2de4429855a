#pragma once
// An attempt at a quiz as plain data: with the bank's revision, all that is needed to show it again as it was
// sat.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/problem.h"
#include "core/teach/place.h"

namespace wm::teach {

/// Choices are named by their place in the bank, not on the screen.
struct Unanswered {
  friend bool operator==(const Unanswered&, const Unanswered&) = default;
};
struct Chosen {
  std::size_t choice = 0;
  friend bool operator==(const Chosen&, const Chosen&) = default;
};
struct Ticked {
  std::vector<std::size_t> choices;  // none twice
  friend bool operator==(const Ticked&, const Ticked&) = default;
};
struct Ordered {
  std::vector<std::size_t> steps;
  friend bool operator==(const Ordered&, const Ordered&) = default;
};
struct Typed {
  std::string text;  // as it was typed
  friend bool operator==(const Typed&, const Typed&) = default;
};
struct Pointed {
  Point point;
  friend bool operator==(const Pointed&, const Pointed&) = default;
};
using Given = std::variant<Unanswered, Chosen, Ticked, Ordered, Typed, Pointed>;

struct Answer {
  std::string question;  // its id
  Given given;
  int seconds = 0;  // spent on it, all visits together
  friend bool operator==(const Answer&, const Answer&) = default;
};

/// The paper is that of the seed (paper.h). Questions that were not reached may be missing from the answers.
struct Attempt {
  std::string bank;
  int revision = 1;
  std::uint64_t seed = 0;
  std::string language;
  std::vector<Answer> answers;
  friend bool operator==(const Attempt&, const Attempt&) = default;
};

/// Reads one attempt as README.md shows it; every mistake found, each with its JSON pointer.
tl::expected<Attempt, std::vector<Problem>> read_attempt(std::string_view json);
/// What reads back equal.
std::string to_json(const Attempt& attempt);

}  // namespace wm::teach
