#pragma once
// Records that end another: a reinstatement, a dismissal, a release.
#include <vector>

#include "core/json/reading.h"
#include "core/records/record.h"

namespace wm {

struct RecordRead {
  json::Value at;
  Record record;
};

/// Finds fault with records that end one of another kind, or one that had not happened yet. Ids that are none
/// of `records` are passed over.
void check_ends(json::Reading& reading, const std::vector<RecordRead>& records);

}  // namespace wm
