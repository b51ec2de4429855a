#pragma once
// The shop's own facts as JSON objects, in the form that records of the core have.
#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "core/json/tree.h"
#include "core/problem.h"
#include "db/facts.h"
#include "db/journal/personal.h"

namespace wm::db {

/// The word that names a kind in a file: "booking", "strike_out".
std::string_view kind_word(const ShopFact& fact);
bool is_shop_kind(std::string_view kind);
std::string_view word(Role role);
std::string_view word(Station station);
std::string_view word(Purpose purpose);
std::string_view word(Turnout turnout);
std::string_view word(Mark mark);
std::string_view word(Hand hand);
std::string_view word(Work work);
std::string_view word(Help help);

/// An object with the fact's own fields beside these.
nlohmann::json to_json(const RecordId& id, Instant at, Instant recorded, const ShopFact& fact);
/// The fact of such an object; `kept`: of what is kept beside it, what has not been blanked.
Expected<ShopFact> read_shop_fact(std::string_view kind, json::Value object, const ByField& kept);

/// The texts of a fact that are kept beside its record, by field.
ByField personal_in(ShopFact fact);
/// Empties what is empty in `blanked`, a fact of the same kind.
void blank_as(const ShopFact& blanked, ShopFact& fact);

}  // namespace wm::db
