#pragma once
// Names of things as people read them, made from the names that the rulebook gives.
#include <QString>
#include <optional>

#include "db/facts.h"

namespace wm::app {

/// "First-aid course" from "first-aid-course": capital first, dashes and underscores as spaces.
QString item_label(std::string_view item);
/// "Jointer/planer, jointing" from "jointer-planer/jointing".
QString target_label(const TargetName& target);
QString class_label(std::string_view machine_class);
/// Inside a sentence: "the jointer/planer, for jointing".
QString target_phrase(std::string_view target);
/// ", revision 3", which ends a phrase, or nothing for 0.
QString revision_words(int revision);
QString mark_words(Mark mark);
/// "Jonas Lindqvist", or the number where the details have been blanked.
QString person_name(const std::optional<db::Person>& person);

}  // namespace wm::app
