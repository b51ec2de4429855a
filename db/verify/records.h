#pragma once
// The records of a store, each looked at by itself: its leaf, and the columns beside it.
#include <cstdint>
#include <functional>
#include <string>
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
  std::string leaf;
  std::vector<Finding> found;
  bool is_leaf = false;  // whether `content` says anything
  LeafContent content;
};

/// Gives every record in order, while the next ones are read and looked at by other threads, each with a
/// connection of its own; what is given is good until `take` returns. Why not all of them could be read, as a
/// sentence's end; empty where they were.
std::string look_at_records(const File& file, const std::function<void(RecordLook&)>& take);

}  // namespace wm::verify
