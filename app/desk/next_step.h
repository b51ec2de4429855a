#pragma once
// Which button does what comes next: for the first step of a route, or for what is to be renewed.
#include <string>

#include "core/decide/answers.h"

namespace wm::app {

enum class NextStep { nothing, paper, lesson, quiz, one_on_one };

struct Next {
  NextStep step = NextStep::nothing;
  std::string item;  // the paper, lesson or quiz
};

/// The first step of the route; nothing where it has none.
Next next_on(const Route& route);
/// Of the gates in grace that keep the standing, the first that a button can renew.
Next next_renewal(const StandingAnswer& answer);

}  // namespace wm::app
