#include "db/emergency.h"

#include "db/journal/subject.h"

namespace wm::db {

EmergencyCall emergency_call(const Memory& memory) {
  const auto& all = memory.of_kind("emergency_call");
  for (auto i = all.rbegin(); i != all.rend(); ++i)
    if (const Entry& entry = memory.entries()[*i]; !entry.voided) return *as<EmergencyCall>(entry.fact);
  return {};
}

}  // namespace wm::db
