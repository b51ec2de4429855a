#pragma once
// What decisions rest on, taken out of the journal.
#include "core/records/shop.h"
#include "db/journal/memory.h"

namespace wm::db {

/// The shop as known at `known` (or all of it, less what was struck out), entries of one person made one. Of
/// records struck out later, `voided` is left as it stands, so that the engine can look further back.
Shop known_shop(const Memory& memory, const Zone& zone, std::optional<Instant> known);
/// The same for one entry, as all that is known has it now. The entry must hold a core fact.
Record known_record(const Memory& memory, const Entry& entry);

}  // namespace wm::db
