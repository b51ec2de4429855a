#pragma once
// Names of things as people read them, made from the names that the rulebook gives.
#include <QString>

#include "core/records/record.h"

namespace wm::app {

/// "First-aid course" from "first-aid-course": capital first, dashes and underscores as spaces.
QString item_label(std::string_view item);
/// Inside a sentence: "the jointer/planer, for jointing".
QString target_phrase(std::string_view target);

}  // namespace wm::app
