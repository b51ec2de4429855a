#pragma once
// What the small shop of the tests is made of.
#include <vector>

#include "db/store.h"

namespace wm::db {

/// 14 March 2026, 18:00 in Chicago (daylight saving time began on 8 March).
inline constexpr Instant evening{1773529200};
inline constexpr std::int64_t hour = 3600, day = 86400;

/// Qt finds its database driver only where there is an application object; a TestShop makes it too.
void make_application();
/// The pages' own costs of a PIN would make each test wait.
StoreOptions cheap_pins();
/// Tier 1: sander, without gates. Tier 2: bandsaw (lesson "guards" for supervised, check-out "bandsaw" for
/// independent) and combi with the modes joint and plane (check-out "combi").
Rulebook small_rulebook(int version, Instant from);

/// The commands that make it; see TestShop for what is in it.
std::vector<Command> small_history();

inline EnterFact fact(Fact f) { return {std::move(f)}; }
inline EnterShopFact own(ShopFact f) { return {std::move(f)}; }

/// A bank of two questions, "guards", as it is issued; somebody's attempt at revision 1, and its answers,
/// both right.
Issued small_bank(int revision = 1);
/// The bandsaw's run sheet: five lines that open it, 6 critical, 7 not, 8 a thickness of 1 in within 0.01 in.
Issued small_sheet(int revision = 1);
AttemptBegun begun_by(const PersonId& person);
std::string small_attempt();

}  // namespace wm::db
