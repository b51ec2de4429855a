#pragma once
// Which run sheet belongs to a machine.
#include <span>
#include <string>
#include <vector>

#include "core/rulebook/rulebook.h"
#include "core/sheet/sheet.h"

namespace wm {

/// The names of the check-outs that a target's gates ask for, at any depth, each once, in order of the gates.
std::vector<std::string> checkouts_asked(const Rulebook& rulebook, std::string_view target);
/// The sheet of the target's class for the first of these that has one; of several revisions the greatest.
/// Null where there is none.
const Sheet* sheet_for(std::span<const Sheet* const> sheets, const Rulebook& rulebook,
                       std::string_view target);

}  // namespace wm
