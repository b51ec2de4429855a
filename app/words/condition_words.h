#pragma once
// The conditions of a machine: what must be so while it is used.
#include <QString>
#include <vector>

#include "core/rulebook/rulebook.h"

namespace wm::app {

/// "staff are in", "one other qualified person is present".
QString condition_words(const Condition& condition);
/// ", while staff are in and one other qualified person is present", or nothing.
QString conditions_clause(const std::vector<Condition>& conditions);

}  // namespace wm::app
