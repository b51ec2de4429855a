#pragma once
// What a leaf says, as far as the columns beside it, the private values and the signatures go.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/time/instant.h"
#include "db/verify/canonical.h"

namespace wm::verify {

/// A hash that stands in a leaf for what is personal.
struct Commitment {
  std::string field, hash;  // the hash in hexadecimal
};

struct LeafContent {
  std::int64_t order = 0, commit = 0;
  std::string id, kind, person, refers_to, station;
  Instant recorded;
  bool paper = false;
  std::vector<Commitment> commitments;  // by field
  Members body;
};

/// Fills `leaf`, or says in a sentence why the text can't be one.
std::optional<std::string> read_leaf(std::string_view text, LeafContent& leaf);

}  // namespace wm::verify
