#pragma once
// The records of a store, each looked at by itself: its leaf, and the columns beside it.
#include <cstdint>
#include <functional>
#include <string_view>
#include <vector>

#include "core/ledger/tree.h"
#include "db/verify/findings.h"
#include "db/verify/leaf_content.h"

namespace wm::verify {

class File;

/// What one row says, whatever stands before it.
struct RecordLook {
  std::int64_t order = 0;  // by its column
  ledger::Hash hash;       // of the leaf as it stands there
  std::string_view leaf;
  std::vector<Finding> found;
  bool is_leaf = false;  // whether `content` says anything
  LeafContent content;
};

/// Gives every record in order, while the next ones are looked at on other threads; what is given is good
/// until `take` returns. What SQLite said where it could not read to the end; empty otherwise.
std::string look_at_records(const File& file, const std::function<void(RecordLook&)>& take);

}  // namespace wm::verify
