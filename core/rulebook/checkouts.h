#pragma once
// Which check-outs a machine's rules ask for, and after what they are asked for again.
#include <string>
#include <string_view>
#include <vector>

#include "core/rulebook/rulebook.h"

namespace wm {

/// The check-outs that a target's gates ask for, at any depth, with those that have to be there before
/// another; of a class with modes, those of every mode.
std::vector<const NeedCheckout*> checkout_needs(const Rulebook& rulebook, std::string_view target);
/// The greatest severity number after which an incident has whoever was operating checked out again there; 0:
/// after none.
int renewed_after_severity(const Rulebook& rulebook, std::string_view target);
/// The names of the check-outs that a change on a target, or on a class, has asked for again. Sorted.
std::vector<std::string> renewed_after_change(const Rulebook& rulebook, std::string_view target);

}  // namespace wm
