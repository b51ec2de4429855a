#pragma once
// A figure, or why there is none: what can't be worked out is said, never shown as a number.
#include <tl/expected.hpp>

namespace wm::teach {

enum class NoFigure {
  nobody,           // no attempts
  one_person,       // one attempt
  one_question,     // nothing beside the question to compare it with
  all_alike,        // everybody has the same score
  other_questions,  // not all were asked the same
  other_lengths     // papers of different lengths
};

using Figure = tl::expected<double, NoFigure>;

}  // namespace wm::teach
