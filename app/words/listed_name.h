#pragma once
// Names as lists that are sorted by family name have them.
#include <QString>

#include "db/facts.h"

namespace wm::app {

/// "Lindqvist, Jonas"; the number where the details have been blanked.
QString listed_name(const db::Person& person);

}  // namespace wm::app
