#pragma once
// Run sheets as JSON, read strictly; the form stands in core/sheet/README.md.
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/sheet/sheet.h"

namespace wm {

/// Reads one sheet; every mistake found, each with its JSON pointer (line and column where it is no JSON).
tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view json);

}  // namespace wm
