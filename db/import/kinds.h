#pragma once
// The kinds of rows in a file of history.
#include <optional>
#include <string>
#include <variant>

#include "db/facts.h"
#include "db/import/rows.h"

namespace wm::db::import {

/// What the row says, by the word in its column "kind". Nothing, with the mistakes in `row`, where it says
/// nothing that could have happened at `at`.
std::optional<std::variant<Fact, ShopFact>> read_kind(RowReader& row, Instant at);

/// What makes a fact of the shop's own that history can hold the same as another.
std::string content_of(const ShopFact& fact);

}  // namespace wm::db::import
