#pragma once
// Everything that is known of a shop and that a decision may rest on.
#include <string>
#include <vector>

#include "core/records/record.h"
#include "core/rulebook/rulebook.h"
#include "core/time/zone.h"

namespace wm {

/// Records and rulebooks in any order. Ids are unique and everything named exists: whoever fills one in (the
/// scenario reader, the store) has checked.
struct Shop {
  Zone zone = Zone::utc();
  std::vector<PersonId> people;
  std::vector<Machine> machines;
  std::vector<Rulebook> rulebooks;
  std::vector<Record> records;
};

}  // namespace wm
