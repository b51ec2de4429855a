#pragma once
// Question banks as the plain text that a shop writes, keeps and shares; the form stands in README.md.
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/teach/bank.h"

namespace wm::teach {

/// Reads a bank; every mistake found, each with its line. Takes time in proportion to the text, which has at
/// most 16 MiB.
tl::expected<Bank, std::vector<Problem>> read_bank(std::string_view text);

/// What reads back equal, for a bank that was read. In one that was put together otherwise, blanks and line
/// breaks inside texts become single blanks: to see what is wrong with it, read what is written.
std::string to_text(const Bank& bank);

}  // namespace wm::teach
