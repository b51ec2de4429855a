#pragma once
// What the shop says of itself for when somebody is hurt.
#include "db/journal/memory.h"

namespace wm::db {

/// What is to be called and said, as it was entered last; empty fields: nothing was.
EmergencyCall emergency_call(const Memory& memory);

}  // namespace wm::db
