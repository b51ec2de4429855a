#pragma once
// World W as a store's file.
#include <string>

#include "world.h"

namespace wm::bench {

/// Writes the records as they are, in order of when they were recorded, past what is checked when somebody
/// enters them: that takes longer than all that is measured. Nobody has details beside a name. Stops the
/// program where the disk fails.
void write_store(const std::string& path, const World& world);

}  // namespace wm::bench
