#pragma once
// The run sheets that come with the program.
#include <vector>

#include "core/problem.h"
#include "core/sheet/sheet.h"

namespace wm::app {

/// Every sheet in the program's resources; one that is broken is left out and told in `broken_run_sheets`.
const std::vector<Sheet>& run_sheets();
const std::vector<Problem>& broken_run_sheets();

}  // namespace wm::app
