#pragma once
// Check-outs whose members have not said that they were shown the machine's cautions.
#include <vector>

#include "app/session.h"

namespace wm::app {

/// For so many days it is shown that a countersignature is missing.
constexpr int days_to_countersign = 30;

struct NotCountersigned {
  const db::Entry* entry;
  const Checkout* checkout;
  const db::SheetMarks* marks;
  std::string machine_class;  // of the unit that it was shown on; empty where none is named
};
/// Those of the last thirty days that were signed with a run sheet, not stopped, and not countersigned: the
/// latest first. None where what was known earlier is shown. Good until the next commit.
std::vector<NotCountersigned> not_countersigned(const Session& session);

}  // namespace wm::app
