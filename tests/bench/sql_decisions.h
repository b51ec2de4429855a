#pragma once
// The same decisions as SQL over an SQLite file of the same records, as somebody would write them who knows
// both. What the queries cover, and what the file is told beforehand, stands in tests/bench/README.md.
#include <memory>
#include <string>
#include <vector>

#include "core/decide/current.h"
#include "world.h"

namespace wm::bench {

class SqlDecisions {
 public:
  /// Fills a new database at `path` ("": a temporary file) with the world's records and the last rulebook's
  /// rules as tables, and makes the queries ready for the world's now. The engine says which records count.
  /// What SQLite refuses ends the program with its message.
  SqlDecisions(const World& world, Current& engine, const std::string& path);
  ~SqlDecisions();
  SqlDecisions(const SqlDecisions&) = delete;
  SqlDecisions& operator=(const SqlDecisions&) = delete;

  /// For each person, in the world's order, each target's, in the world's order.
  std::vector<Rung> everyone();
  Rung standing(const PersonId& person, const TargetName& target);
  /// Sorted.
  std::vector<PersonId> who(const TargetName& target, Rung at_least);

 private:
  struct Base;
  std::unique_ptr<Base> base_;
};

}  // namespace wm::bench
