#pragma once
// The run sheets that come with the program: patterns that a shop takes over or begins with.
#include <string>
#include <vector>

#include "core/problem.h"
#include "core/sheet/sheet.h"

namespace wm::app {

struct OwnSheet {
  std::string text;
  Sheet sheet;
};

/// Every revision in the program's resources, by name, the newest first; one that is broken is left out and
/// told in `broken_own_sheets`.
const std::vector<OwnSheet>& own_sheets();
const std::vector<Problem>& broken_own_sheets();

}  // namespace wm::app
