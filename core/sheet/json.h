#pragma once
// Run sheets as JSON, read strictly and written back; the form stands in core/sheet/README.md.
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/sheet/sheet.h"

namespace wm {

/// Reads one sheet; every mistake found, each with its JSON pointer (line and column where it is no JSON).
tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view json);
/// Written so that reading it again gives an equal sheet; what has its default is left out.
std::string to_json(const Sheet& sheet);

}  // namespace wm
