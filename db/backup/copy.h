#pragma once
// One store's file copied whole and compared.
#include <string>

#include "core/time/instant.h"
#include "db/sql/connection.h"

namespace wm::db {

/// Copies all that `from` has, as of one moment, into a new file at `to`, makes it safe and reads it back:
/// every page, and every row against the original. The number of commits it has. Leaves no file where it
/// fails.
Expected<std::int64_t> copy_checked(Connection& from, const std::string& to);
/// The same of a shop on a server, which becomes a file: every row is compared with the server's, and the
/// ledger that the rows make with the server's root. Needs no right there but a desk's, and no program of the
/// server's.
Expected<std::int64_t> copy_from_server(const std::string& store, const std::string& to);
/// "20260314-230000Z": UTC, so that no hour comes twice.
std::string stamp(Instant t);
/// The other way round; nothing where it is not such a text.
std::optional<Instant> read_stamp(const std::string& text);

}  // namespace wm::db
