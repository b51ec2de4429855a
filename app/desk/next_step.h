#pragma once
// What a person does next, out of what an answer says is missing.
#include <string>

#include "app/desk/answer.h"

namespace wm::app {

struct Missing {
  NextStep step = NextStep::nothing;
  std::string item;
};

/// Of the requirements that do not hold for `rung`, the one that a shop sees to first: papers, then lessons,
/// then quizzes, then what happens at the machine (common practice, no source).
Missing first_missing(const StandingAnswer& answer, Rung rung);

}  // namespace wm::app
