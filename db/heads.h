#pragma once
// The head of a store's tree, and the heads that are kept outside it: who can write to the store can also
// build its tree anew, and only what was written down elsewhere before tells.
#include <optional>
#include <string>

#include "core/ledger/root.h"
#include "core/problem.h"

namespace wm::db {

class Connection;

/// As the tree stands, or stood when all that had been recorded by `known` was in it. `at` is when its last
/// record was recorded; of a shop without any, `first_instant`.
Expected<ledger::Head> head_of(Connection& connection, std::optional<Instant> known = std::nullopt);
/// The same of a file that is not open here.
Expected<ledger::Head> head_of(const std::string& store);

/// The heads kept in a folder: the lines of its file "heads", each signed by the computer that wrote it.
std::string heads_file(const std::string& folder);
/// The last of them; nothing where there is none. Refuses a file whose last line is not one.
Expected<std::optional<ledger::SignedHead>> last_head(const std::string& folder);
/// Adds one, and sees that it is on the disk. One of the same size as the last is not written again.
Expected<void> keep_head(const std::string& folder, const ledger::Head& head, const ledger::SigningKey& key);

}  // namespace wm::db
