#pragma once
// Which role may do what: one table.
#include <string>

#include "core/problem.h"
#include "core/time/zone.h"
#include "db/command.h"
#include "db/journal/memory.h"

namespace wm::db {

/// What a permission may hang on beside role and action.
struct Occasion {
  const Memory& memory;
  const Zone& zone;
  PersonId by;
  bool from_paper = false;
  Instant at, now;
  Station station = Station::whole;  // where it is entered
};

/// Refuses with a sentence that says who may, and where. A member at the quiz station has that role.
Expected<void> allowed(Role role, const Action& action, const Occasion& occasion);

/// The word for a kind of action: "correct_person", or the kind of the fact it enters.
std::string action_word(const Action& action);

}  // namespace wm::db
