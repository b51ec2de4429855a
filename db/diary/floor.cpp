#include "db/diary/floor.h"

#include <algorithm>
#include <map>

#include "db/diary/diary.h"

namespace wm::db {

Floor floor_at(const Memory& memory, const Zone& zone, Instant at) {
  const Day day = zone.day(at);
  std::map<PersonId, Presence> last;
  for (const std::size_t i : memory.of_kind("presence")) {
    const Entry& entry = memory.entries()[i];
    if (entry.voided || entry.at > at || zone.day(entry.at) != day) continue;
    const Presence& presence = *as<Presence>(entry.fact);
    last[memory.joined(presence.person)] = presence;
  }
  Floor floor;
  for (const auto& [person, presence] : last) {
    if (!presence.in) continue;
    floor.present.push_back(person);
    floor.staffed = floor.staffed || presence.staff;
  }
  return floor;
}

std::vector<AtMachine> at_machines(const Memory& memory, Instant at) {
  std::vector<AtMachine> out;
  for (const std::size_t i : memory.of_kind("started")) {
    const Entry& entry = memory.entries()[i];
    if (entry.voided || entry.at > at) continue;
    const Entry* left = memory.about<Left>(entry.id);
    if (left != nullptr && left->at <= at) continue;
    const Started& f = *as<Started>(entry.fact);
    out.push_back({entry.id, memory.joined(f.person), f.machine, f.target,
                   f.supervisor.empty() ? PersonId() : memory.joined(f.supervisor), entry.at});
  }
  return out;
}

std::vector<PersonId> busy_for(const Memory& memory, const PersonId& person, Instant at, Instant now) {
  const PersonId them = memory.joined(person);
  std::vector<PersonId> busy;
  for (const AtMachine& each : at_machines(memory, at)) {
    busy.push_back(each.person);
    if (!each.supervisor.empty()) busy.push_back(each.supervisor);
  }
  for (const std::size_t i : memory.of_kind("booking")) {
    const Entry& entry = memory.entries()[i];
    const Booking& b = *as<Booking>(entry.fact);
    if (at < b.from || b.to <= at || memory.joined(b.person) == them || !takes_time(memory, entry, now))
      continue;
    const Entry* came = memory.about<Attendance>(entry.id);
    if (came == nullptr) continue;  // nobody has come yet
    busy.push_back(memory.joined(b.person));
    busy.push_back(memory.joined(b.assessor));
  }
  std::sort(busy.begin(), busy.end());
  busy.erase(std::unique(busy.begin(), busy.end()), busy.end());
  return busy;
}

}  // namespace wm::db
