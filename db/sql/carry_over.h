#pragma once
// From the tables of versions 1 and 2 to the ledger.
#include "core/problem.h"
#include "db/sql/connection.h"

namespace wm::db {

/// Fills the ledger from the earlier tables, in the same transaction that then takes those away. Commits keep
/// their numbers and ids. Earlier versions kept no more than the latest details and PIN of a person: every
/// record of details says these, and PINs before the latest are blanked. A file without a shop in it is new:
/// nothing to do.
Expected<void> carry_over(Connection& connection);

}  // namespace wm::db
