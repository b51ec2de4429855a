#pragma once
// What else is entered with a fact of the shop's own, since it would be forgotten otherwise.
#include "db/check/case.h"
#include "db/plan.h"

namespace wm::db {

/// A one-on-one that is for certain ends the wait for it. Whoever comes to a time that is only held makes it
/// certain by that. Whose booking is cancelled waits again, since when they had waited before. History that
/// makes a new shop says all of that itself.
void add_what_follows(const Case& c, const ShopFact& fact, Plan& plan);

/// The places on the waiting list that somebody keeps, for whatever mode of that machine class.
std::vector<const Entry*> waits(const Memory& memory, const PersonId& person, std::string_view machine_class);

/// Whether a record can have been entered so, with a command for another.
bool is_what_follows(const AnyFact& fact);

}  // namespace wm::db
