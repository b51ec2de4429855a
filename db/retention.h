#pragma once
// Whose details the shop need not keep any longer.
#include <vector>

#include "db/store.h"

namespace wm::db {

/// Nobody's details go by themselves: a manager erases them (BlankPerson).
struct MayGo {
  PersonId person;  // and entries joined to it
  Instant last;     // when the last record that names them happened
  Instant since;    // from when their details may go
  friend bool operator==(const MayGo&, const MayGo&) = default;
};

/// By `keep_details` of the rulebook in force: everybody whom no record that counts has named for so long, in
/// order of `since`. Not who has a role at the desk, is paused, holds the key of a machine that is out of
/// service, or has been erased. What was printed about somebody does not name them.
std::vector<MayGo> details_that_may_go(Store& store);

/// A visit whose visitor's name need not be kept any longer; a manager erases it (BlankRecord).
struct VisitMayGo {
  RecordId visit;
  std::string name;
  Instant at;     // when they came
  Instant since;  // from when the name may go
};
/// By the same rule, of all visits that still have a name, in order of `since`.
std::vector<VisitMayGo> visits_that_may_go(Store& store);

}  // namespace wm::db
