#pragma once
// Names as lists have them: people by family name, units with their machine.
#include <QString>
#include <string_view>

#include "db/facts.h"

namespace wm::app {

/// "Lindqvist, Jonas"; the number where the details have been blanked.
QString listed_name(const db::Person& person);
/// "Belt sander, unit 2"; the label alone where it says what the machine is.
QString unit_name(std::string_view machine_class, const std::string& label);

}  // namespace wm::app
