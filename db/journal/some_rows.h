#pragma once
// Some of the file's records, read without the others.
#include <functional>

#include "db/journal/leaf.h"
#include "db/sql/connection.h"

namespace wm::db {

/// What had been proved of the ages of those who have been erased.
using Proved = std::map<PersonId, std::optional<Day>>;
/// Which records: those about the whole shop (rulebooks, publications, machines, ends, strike-outs, people's
/// details, and after them what is said in an emergency), or those about one person.
using TakeContent = std::function<void(LeafContent&&)>;

/// The questions that read what is about the whole shop: an index serves each.
extern const char* const shop_wide_query;
extern const char* const emergency_call_query;

/// Says that a record of the file at `path` can't be read, and why.
tl::unexpected<Problem> damaged_record(const std::string& path, const RecordId& id, const Problem& why);

Expected<Proved> read_proved(Connection& connection);
/// Each of the two in order, up to the order `last`.
Expected<void> read_shop_wide(Connection& connection, const Proved& proved, std::int64_t last,
                              const TakeContent& take);
Expected<void> read_person(Connection& connection, const PersonId& person, const Proved& proved,
                           std::int64_t last, const TakeContent& take);

}  // namespace wm::db
