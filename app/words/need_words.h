#pragma once
// What a requirement asks, without whether it holds.
#include <QString>

#include "core/decide/answers.h"

namespace wm::app {

/// As a list has it: "Quiz: Tier 3, revision 2, 80 % needed".
QString need_label(const Reason& reason);
/// Inside a sentence: "the quiz “Tier 3”, revision 2, with 80 % or more". Of any_of and the like only the
/// heading: "one of these".
QString need_phrase(const Reason& reason);

}  // namespace wm::app
