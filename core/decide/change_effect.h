#pragma once
// What a change of a machine takes away, before it is entered.
#include <optional>
#include <string>
#include <vector>

#include "core/decide/current.h"

namespace wm {

struct ChangeEffect {
  /// Check-outs of that name count no longer there, by the rulebook in force: `renew_after_change`. Sorted.
  std::vector<std::string> checkouts;
  std::vector<Shift> shifts;  // whose standings would become others, in order of (person, target)
  std::size_t people = 0;     // of how many people
  friend bool operator==(const ChangeEffect&, const ChangeEffect&) = default;
};

/// Of a change on a target or class at `at`. Nothing is taken in. With `still`, whose standings would differ
/// at that instant as well: whoever was checked out between the two loses nothing.
ChangeEffect effect_of_change(Current& shop, const TargetName& target, Instant at,
                              std::optional<Instant> still = {});

}  // namespace wm
