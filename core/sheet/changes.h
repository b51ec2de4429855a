#pragma once
// What a revision of a run sheet changes against another.
#include <cstddef>
#include <vector>

#include "core/sheet/sheet.h"

namespace wm {

/// Lines are known by their words. Numbers from 0 on: of `added`, `changed` and `eased` in the sheet after,
/// of `removed` in the one before.
struct SheetChanges {
  std::vector<std::size_t> added, removed;
  std::vector<std::size_t> changed;  // other words beside it, another measure, or critical now
  std::vector<std::size_t> eased;    // critical before, and no longer
  bool order = false;                // of what both have, or its sections
  bool machine = false;              // its class or its check-out
  friend bool operator==(const SheetChanges&, const SheetChanges&) = default;
};

/// Names, titles and revisions are not compared.
SheetChanges changes(const Sheet& before, const Sheet& after);

}  // namespace wm
