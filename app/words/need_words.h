#pragma once
// What a requirement asks, without whether it holds.
#include <QString>
#include <vector>

#include "core/decide/answers.h"

namespace wm::app {

/// As a list has it: "Quiz: Tier 3, revision 2, 80 % needed".
QString need_label(const Reason& reason);
/// Inside a sentence: "the quiz “Tier 3”, revision 2, with 80 % or more". Of any_of and the like only the
/// heading: "one of these".
QString need_phrase(const Reason& reason);
/// Several inside a sentence, at most `most` of them and how many more: "the lesson “Guards”, the quiz “Tier
/// 1”, with 80 % or more, and 2 more". Of any_of and the like its parts: "the paper “Waiver” or …".
QString missing_phrase(const std::vector<Reason>& reasons, std::size_t most);

}  // namespace wm::app
