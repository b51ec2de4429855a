#pragma once
// Run sheets as the plain text that a shop writes, keeps and shares; the form stands in README.md.
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/sheet/sheet.h"

namespace wm {

/// More lines than any run sheet has.
inline constexpr std::size_t most_sheet_lines = 999;

/// Reads a sheet; every mistake found, each with its line: also where the sheet does not open as each must
/// (opening.h). Takes time in proportion to the text, which has at most 1 MiB.
tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view text);

/// What reads back equal, for a sheet that was read. In one that was put together otherwise, blanks and line
/// breaks inside texts become single blanks: to see what is wrong with it, read what is written.
std::string to_text(const Sheet& sheet);

}  // namespace wm
