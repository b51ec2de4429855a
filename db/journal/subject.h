#pragma once
// What an entry is about: the columns it is found by.
#include <type_traits>
#include <variant>

#include "db/facts.h"

namespace wm::db {

using AnyFact = std::variant<Fact, ShopFact>;

struct Subject {
  PersonId person;
  MachineId machine;
  RecordId refers_to;  // the record that it ends, adds to or strikes out
};

Subject subject_of(const AnyFact& fact);
std::string_view any_kind_word(const AnyFact& fact);

template <class F, class Variant>
inline constexpr bool is_kind_of = false;
template <class F, class... Kinds>
inline constexpr bool is_kind_of<F, std::variant<Kinds...>> = (std::is_same_v<F, Kinds> || ...);

/// The fact of a kind inside any fact, or nothing.
template <class F>
const F* as(const AnyFact& fact) {
  if constexpr (is_kind_of<F, Fact::variant>) {
    const auto* core = std::get_if<Fact>(&fact);
    return core == nullptr ? nullptr : std::get_if<F>(core);
  } else {
    const auto* own = std::get_if<ShopFact>(&fact);
    return own == nullptr ? nullptr : std::get_if<F>(own);
  }
}

}  // namespace wm::db
