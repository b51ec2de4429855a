#pragma once
// The shop's own facts as JSON objects, in the form that records of the core have.
#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "core/json/tree.h"
#include "core/problem.h"
#include "db/facts.h"

namespace wm::db {

/// The word that names a kind in a file: "booking", "strike_out".
std::string_view kind_word(const ShopFact& fact);
bool is_shop_kind(std::string_view kind);
std::string_view word(Role role);
std::string_view word(Purpose purpose);
std::string_view word(Turnout turnout);
std::string_view word(Mark mark);

/// An object with the fact's own fields beside these.
nlohmann::json to_json(const RecordId& id, Instant at, Instant recorded, const ShopFact& fact);
/// The fact of such an object.
Expected<ShopFact> read_shop_fact(std::string_view kind, json::Value object);

}  // namespace wm::db
