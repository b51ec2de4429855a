#pragma once
// All that the store holds about one person, as JSON. The form is in README.md beside this file.
#include <string>

#include "core/problem.h"
#include "db/store.h"

namespace wm::db {

/// The id that `who` stands for: an id itself, or a member's number. Refuses what is neither, and a number
/// that two people have who are not joined.
Expected<PersonId> find_person(const Store& store, const std::string& who);

/// JSON in UTF-8, indented, ending in a line feed; the same store gives the same bytes. With what joined
/// entries of the person say. Reads the file as it is now; refuses what cannot be read.
Expected<std::string> export_person(const Store& store, const PersonId& id);

}  // namespace wm::db
