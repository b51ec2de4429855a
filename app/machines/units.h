#pragma once
// The shop's units with their locks, as of the session's dates.
#include <optional>
#include <string>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct UnitState {
  MachineId id;
  std::string machine_class;
  std::string label;
  std::optional<int> tier;        // nothing: the rulebook in force does not have its class
  std::vector<db::LockOn> locks;  // in order of when they were put on
};

/// By tier, class and label.
std::vector<UnitState> unit_states(Session& session);
/// Whether a record is about the unit: entered, locked, unlocked, or its class changed.
bool is_about(const db::Entry& entry, const UnitState& unit, const Session& session);

}  // namespace wm::app
