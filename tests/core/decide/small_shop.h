#pragma once
// A shop small enough to be worked out by hand.
#include "core/records/shop.h"
#include "core/time/period.h"

namespace wm::small {

inline constexpr Instant start{1735689600};  // 2025-01-01T00:00:00Z
inline constexpr Day first{20089};           // that day
inline constexpr std::int64_t a_day = 86400;

/// One class, the saw, with one gate for independent work; ana, and bo who may assess her.
inline Shop shop_asking(Requirement need) {
  Shop shop;
  shop.people = {"ana", "bo"};
  Rulebook book{1, start - 1, start - 1, {{1, {}, {}, {}}}, {}};
  book.classes = {{"saw", 1, {}, {{"g", Rung::independent, std::move(need), {}}}, {}, {}, {}}};
  shop.rulebooks = {book};
  shop.records.push_back({"appointed", start, start, {}, Appoint{"bo", Everything{}, true, first + 9000}});
  return shop;
}

inline void add(Shop& shop, const RecordId& id, Instant at, Fact fact) {
  shop.records.push_back({id, at, at, {}, std::move(fact)});
}

}  // namespace wm::small
