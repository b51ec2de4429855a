#pragma once
// The records of a person and of whoever those rest on, and so on into the past.
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "db/journal/some_rows.h"

namespace wm::db {

/// Reads them out of a file with as many threads as the computer has processors, each with a connection of
/// its own: half of the time goes into finding the rows, half into reading what they say.
class Closure {
 public:
  /// Whose ability to assess or to supervise a record rests on; empty where it counts by itself.
  using WitnessOf = std::function<PersonId(const LeafContent&)>;
  /// Under which ids a person's records stand: of somebody entered twice, both.
  using IdsOf = std::function<std::vector<PersonId>(const PersonId&)>;

  /// `last`: the order up to which records are read, so that all that is known is of one moment.
  Closure(std::string path, const Proved& proved, std::int64_t last, WitnessOf witness_of, IdsOf ids_of);

  /// Reads about a person and about everybody whom that leads to, but for those in `persons`, and adds them
  /// there. In no order; each stays where it was read, since they are many and heavy to move.
  Expected<std::vector<std::unique_ptr<const LeafContent>>> read(const PersonId& person,
                                                                 std::set<PersonId>& persons) const;

 private:
  std::string path_;
  const Proved& proved_;
  std::int64_t last_;
  WitnessOf witness_of_;
  IdsOf ids_of_;
};

}  // namespace wm::db
