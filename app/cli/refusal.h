#pragma once
// A Problem on standard error.
#include "core/problem.h"

namespace wm::app {

/// "WHERE: what. remedy." on one line; returns the exit status that goes with it, 2.
int refuse(const Problem& problem);

}  // namespace wm::app
