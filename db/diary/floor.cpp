#include "db/diary/floor.h"

#include <algorithm>
#include <iterator>
#include <map>

#include "db/diary/diary.h"

namespace wm::db {
namespace {

bool under_way(const Booking& booking, Instant at) { return booking.from <= at && at < booking.to; }

/// Whether the check-out that a booking was for was signed by `at`: then it is over, whatever its time.
bool is_signed(const Memory& memory, const Booking& booking, Instant at, std::optional<Instant> known) {
  const PersonId person = memory.joined(booking.person, known);
  const auto& all = memory.of_kind("checkout");
  for (auto i = all.rbegin(); i != all.rend(); ++i) {
    const Entry& entry = memory.entries()[*i];
    if (entry.recorded < booking.from) break;  // nothing is entered that lies ahead
    if (!counts(entry, known) || entry.at < booking.from || entry.at > at) continue;
    if (memory.joined(as<Checkout>(entry.fact)->person, known) != person) continue;
    const Entry* sheet = memory.about<SheetMarks>(entry.id, known);
    const MachineId machine = sheet == nullptr ? MachineId() : as<SheetMarks>(sheet->fact)->machine;
    if (!machine.empty() && memory.class_of_machine(machine) == class_of(booking.target)) return true;
  }
  return false;
}

/// One-on-ones under way to which somebody came.
std::vector<Booking> together_at(const Memory& memory, Instant at, Instant now,
                                 std::optional<Instant> known = {}) {
  std::vector<Booking> out;
  for (const std::size_t i : memory.of_kind("booking")) {
    const Entry& entry = memory.entries()[i];
    const Booking& booking = *as<Booking>(entry.fact);
    if (!under_way(booking, at) || !counts(entry, known) || !takes_time(memory, entry, now, known)) continue;
    if (memory.about<Attendance>(entry.id, known) == nullptr) continue;  // nobody has come yet
    if (booking.purpose == Purpose::check_out && is_signed(memory, booking, at, known)) continue;
    out.push_back(booking);
    out.back().person = memory.joined(booking.person, known);
    out.back().assessor = memory.joined(booking.assessor, known);
    if (!booking.second.empty()) out.back().second = memory.joined(booking.second, known);
  }
  return out;
}

/// From when on whoever came in may be in still at `at`: from the beginning of its day; or of the day before,
/// where an opening covers the midnight between them and is not over yet. One that is over on neither day
/// ends with the second.
Instant came_in_since(const Memory& memory, const Zone& zone, Instant at, std::optional<Instant> known) {
  const Day today = zone.day(at);
  const Instant midnight = zone.start(today);
  const ShopHours hours = shop_hours(memory, known);
  const auto& open = hours.open ? hours.open : hours.staffed;
  if (!open) return midnight;
  const auto openings = times_of(zone, *open, midnight - 1, midnight + 1);
  const bool still = std::ranges::any_of(openings, [&](const Interval& each) {
    return each.from < midnight && midnight < each.to && at < each.to;
  });
  return still ? zone.start(today + -1) : midnight;
}

void add_present(const Memory& memory, Instant since, Instant at, std::optional<Instant> known,
                 Floor& floor) {
  std::map<PersonId, Presence> last;
  for (const std::size_t i : memory.of_kind("presence")) {
    const Entry& entry = memory.entries()[i];
    if (!counts(entry, known) || entry.at > at || entry.at < since) continue;
    const Presence& presence = *as<Presence>(entry.fact);
    last[memory.joined(presence.person, known)] = presence;
  }
  for (const auto& [person, presence] : last) {
    if (!presence.in) continue;
    floor.present.push_back(person);
    if (presence.staff) floor.staff.push_back(person);
  }
}

void add_visitors(const Memory& memory, Instant since, Instant at, std::optional<Instant> known,
                  Floor& floor) {
  for (const std::size_t i : memory.of_kind("visit")) {
    const Entry& entry = memory.entries()[i];
    if (!counts(entry, known) || entry.at > at || entry.at < since) continue;
    const Entry* left = memory.about<VisitEnd>(entry.id, known);
    if (left != nullptr && left->at <= at) continue;
    const Visit& visit = *as<Visit>(entry.fact);
    const PersonId host = memory.joined(visit.host, known);
    floor.visitors.push_back({entry.id, visit.name, visit.paper, host, has(floor.present, host), entry.at});
  }
}

/// Of a start that is not over, or nothing.
void add_at_machine(const Memory& memory, const Entry& entry, Instant at, std::optional<Instant> known,
                    std::vector<AtMachine>& out) {
  if (!counts(entry, known) || entry.at > at) return;
  const Entry* left = memory.about<Left>(entry.id, known);
  if (left != nullptr && left->at <= at) return;
  const Started& f = *as<Started>(entry.fact);
  out.push_back({entry.id, memory.joined(f.person, known), f.machine, f.target,
                 f.supervisor.empty() ? PersonId() : memory.joined(f.supervisor, known), entry.at,
                 noted_gone(memory, entry, at, known)});
}

int supervises_at_once(const Rulebook* rulebook, const TargetName& target) {
  const MachineClass* machine = rulebook ? find_class(*rulebook, class_of(target)) : nullptr;
  const Tier* tier = machine ? find_tier(*rulebook, machine->tier) : nullptr;
  return tier ? tier->supervises_at_once : 1;
}

}  // namespace

Floor floor_at(const Memory& memory, const Zone& zone, Instant at, std::optional<Instant> known) {
  Floor floor;
  const Instant since = came_in_since(memory, zone, at, known);
  add_present(memory, since, at, known, floor);
  add_visitors(memory, since, at, known, floor);
  floor.at_machines = at_machines(memory, at, known);
  for (const Booking& each : together_at(memory, at, at, known)) floor.together.push_back(everybody_in(each));
  return floor;
}

std::vector<AtMachine> at_machines(const Memory& memory, Instant at, std::optional<Instant> known) {
  std::vector<AtMachine> out;
  // Nothing is entered that lies ahead, so what was left by the last entry is over by then.
  const bool now = !known && memory.last_recorded() <= at;
  if (now)
    for (const std::size_t i : memory.open_starts())
      add_at_machine(memory, memory.entries()[i], at, known, out);
  else
    for (const std::size_t i : memory.of_kind("started"))
      add_at_machine(memory, memory.entries()[i], at, known, out);
  return out;
}

std::optional<NotedGone> noted_gone(const Memory& memory, const Entry& start, Instant at,
                                    std::optional<Instant> known) {
  const Started& f = *as<Started>(start.fact);
  const PersonId person = memory.joined(f.person, known);
  const PersonId supervisor = f.supervisor.empty() ? person : memory.joined(f.supervisor, known);
  std::optional<NotedGone> first;
  const auto& all = memory.of_kind("presence");
  for (auto i = all.rbegin(); i != all.rend(); ++i) {
    const Entry& entry = memory.entries()[*i];
    if (entry.recorded < start.at) break;  // nothing is entered that lies ahead: these were before it
    const Presence& presence = *as<Presence>(entry.fact);
    const bool since = entry.at > start.at || (entry.at == start.at && entry.order > start.order);
    if (presence.in || !since || entry.at > at || !counts(entry, known)) continue;
    const PersonId who = memory.joined(presence.person, known);
    if ((who == person || who == supervisor) && (!first || entry.at < first->at)) first = {who, entry.at};
  }
  return first;
}

PersonId whose_lock(const Memory& memory, const Entry& lockout, std::optional<Instant> known) {
  PersonId whose = lockout.entered_by;
  for (const Entry* entry : memory.all_about<Tag>(lockout.id, known))
    if (const Tag& tag = *as<Tag>(entry->fact); !tag.put_on_by.empty()) whose = tag.put_on_by;
  return whose;
}

std::vector<LockOn> locks_on(const Memory& memory, Instant at, std::optional<Instant> known) {
  std::vector<LockOn> out;
  for (const std::size_t i : memory.of_kind("lockout")) {
    const Entry& entry = memory.entries()[i];
    if (!counts(entry, known) || entry.at > at) continue;
    const Entry* off = memory.about<Release>(entry.id, known);
    if (off != nullptr && off->at <= at) continue;
    LockOn lock{
        entry.id,         as<Lockout>(entry.fact)->machine, entry.at, whose_lock(memory, entry, known),
        entry.entered_by, {entry.id, {}, {}, {}, {}},       {}};
    if (const Entry* tag = memory.about<Tag>(entry.id, known)) lock.tag = *as<Tag>(tag->fact);
    for (const Entry* each : memory.all_about<Reached>(entry.id, known))
      lock.attempts.push_back({each->at, each->entered_by, as<Reached>(each->fact)->how});
    out.push_back(std::move(lock));
  }
  std::ranges::stable_sort(out, {}, &LockOn::since);
  return out;
}

bool takes_one_more(const Rulebook* rulebook, const std::vector<TargetName>& supervised,
                    const TargetName& more) {
  int most = supervises_at_once(rulebook, more);
  for (const TargetName& target : supervised) most = std::min(most, supervises_at_once(rulebook, target));
  return static_cast<int>(supervised.size()) < most;
}

std::vector<PersonId> busy_for(const Memory& memory, const PersonId& person, Instant at, Instant now,
                               const Rulebook* rulebook, const TargetName& target) {
  const PersonId them = memory.joined(person);
  std::vector<PersonId> busy;
  std::map<PersonId, std::vector<TargetName>> supervise;
  for (const AtMachine& each : at_machines(memory, at)) {
    busy.push_back(each.person);
    if (!each.supervisor.empty()) supervise[each.supervisor].push_back(each.target);
  }
  for (const auto& [supervisor, targets] : supervise)
    if (!takes_one_more(rulebook, targets, target)) busy.push_back(supervisor);
  for (const Booking& each : together_at(memory, at, now))
    if (each.person != them) std::ranges::copy(everybody_in(each), std::back_inserter(busy));
  std::sort(busy.begin(), busy.end());
  busy.erase(std::unique(busy.begin(), busy.end()), busy.end());
  return busy;
}

OneOnOnes one_on_ones_at(const Memory& memory, const PersonId& who, const MachineId& machine, Instant at,
                         Instant now) {
  const PersonId person = memory.joined(who);
  OneOnOnes out;
  for (const Booking& each : together_at(memory, at, now)) {
    const Booked taken{each.person, each.assessor, each.machine, {each.from, each.to}, each.second};
    const bool here = each.machine == machine;
    if (taken.takes(person) == here) continue;  // their own, here; or others', elsewhere
    (here ? out.of_others : out.elsewhere) = taken;
  }
  return out;
}

StartNow start_at(const Memory& memory, const Zone& zone, Decider& decider, const PersonId& who,
                  const MachineId& machine, const TargetName& target, Instant at, Instant now) {
  const PersonId person = memory.joined(who);
  const auto slash = target.find('/');
  const std::string mode = slash == std::string::npos ? "" : target.substr(slash + 1);
  const Floor floor = floor_at(memory, zone, at);
  const auto busy = busy_for(memory, person, at, now, decider.in_force(at), target);
  StartNow start;
  // Staff who are in are others, who could come and help: nobody watches over themself.
  const bool staffed = std::ranges::any_of(floor.staff, [&](const PersonId& id) { return id != person; });
  start.may = decider.may_start(person, machine, mode, at, staffed, floor.present, busy);
  start.needs_supervisor = decider.rung(person, target, at) == Rung::supervised;
  for (const AtMachine& each : floor.at_machines) {
    if (each.machine == machine) start.unit_in_use = each;
    if (each.person == person || each.supervisor == person) start.at_another = each;
  }
  const OneOnOnes here = one_on_ones_at(memory, person, machine, at, now);
  start.unit_taken = here.of_others;
  start.in_one_on_one = here.elsewhere;
  if (start.unit_taken) return start;
  for (const Booked& each : booked(memory, {at, at + 1}, now))
    if (each.machine == machine && !each.takes(person)) start.booked_for = each;
  return start;
}

}  // namespace wm::db
