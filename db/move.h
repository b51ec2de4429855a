#pragma once
// A whole shop into another place, on either engine: a file into a server's database, or back.
#include <string>

#include "core/ledger/root.h"
#include "core/problem.h"
#include "db/store.h"

namespace wm::db {

/// Copies every record as it is, with what is kept apart, into a place where no shop is yet, all or nothing;
/// then reads both through and compares them. Gives the head of the ledger, which is the same on both sides.
/// The shop that is copied stays as it was. Refuses one whose leaves do not give its own root.
Expected<ledger::Head> move_store(const std::string& from, const std::string& to,
                                  const StoreOptions& options = {});

}  // namespace wm::db
