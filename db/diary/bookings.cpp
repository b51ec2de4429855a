// Which bookings stand, and what they came to.
#include <algorithm>
#include <tuple>

#include "core/time/period.h"
#include "db/diary/diary.h"

namespace wm::db {
namespace {

const Attendance* turnout(const Memory& memory, const RecordId& booking, std::optional<Instant> known = {}) {
  const Entry* entry = memory.about<Attendance>(booking, known);
  return entry == nullptr ? nullptr : as<Attendance>(entry->fact);
}

/// Whether somebody came, and what was then cancelled had begun: what was taught by then stays taught.
bool came_before_its_end(const Memory& memory, const Entry& entry) {
  const Entry* cancelled = memory.about<Cancel>(entry.id);
  const Attendance* came = turnout(memory, entry.id);
  return !entry.voided && cancelled != nullptr && cancelled->at >= as<Booking>(entry.fact)->from &&
         came != nullptr && came->turnout != Turnout::not_come;
}

}  // namespace

bool has(const std::vector<PersonId>& ids, const PersonId& id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

bool stands(const Memory& memory, const Entry& entry, Instant now, std::optional<Instant> known) {
  const Booking& booking = *as<Booking>(entry.fact);
  if (!counts(entry, known) || memory.about<Cancel>(entry.id, known) != nullptr ||
      memory.about<Booking>(entry.id, known) != nullptr)
    return false;
  return !given_up(booking, memory.about<Confirmed>(entry.id, known) != nullptr, now);
}

bool takes_time(const Memory& memory, const Entry& entry, Instant now, std::optional<Instant> known) {
  const Attendance* came = turnout(memory, entry.id, known);
  return stands(memory, entry, now, known) && (came == nullptr || came->turnout != Turnout::not_come);
}

std::vector<Booked> booked(const Memory& memory, const Interval& within, Instant now,
                           const RecordId& but_for) {
  std::vector<Booked> out;
  for (const std::size_t i : memory.of_kind("booking")) {
    const Entry& entry = memory.entries()[i];
    const Booking& b = *as<Booking>(entry.fact);
    const Interval when{b.from, b.to};
    if (overlap(when, within) && entry.id != but_for && takes_time(memory, entry, now))
      out.push_back({memory.joined(b.person), memory.joined(b.assessor), b.machine, when,
                     b.second.empty() ? PersonId() : memory.joined(b.second)});
  }
  return out;
}

std::vector<Day> days_not_come(const Memory& memory, const Zone& zone, const PersonId& person) {
  const std::vector<PersonId> them = memory.aliases(person);
  std::vector<Day> out;
  for (const std::size_t i : memory.of_kind("booking")) {
    const Entry& entry = memory.entries()[i];
    const Booking& booking = *as<Booking>(entry.fact);
    if (entry.voided || !has(them, booking.person)) continue;
    const Attendance* came = turnout(memory, entry.id);
    if (came != nullptr && came->turnout == Turnout::not_come) out.push_back(zone.day(booking.from));
  }
  return out;
}

std::optional<Instant> turns_18(const Memory& memory, const Zone& zone, const PersonId& person) {
  const std::vector<PersonId> them = memory.aliases(person);
  const Entry* latest = nullptr;
  const auto order = [](const Entry& e) { return std::tie(e.at, e.recorded, e.id); };
  for (const std::size_t i : memory.of_kind("birth")) {
    const Entry& entry = memory.entries()[i];
    if (entry.voided || !has(them, as<Birth>(entry.fact)->person)) continue;
    if (latest == nullptr || order(*latest) < order(entry)) latest = &entry;
  }
  if (latest == nullptr) return std::nullopt;
  return zone.start(birthday(as<Birth>(latest->fact)->born, 18));
}

namespace {

const Tier* tier_of(const Rulebook* rulebook, const TargetName& target) {
  const MachineClass* machine = rulebook ? find_class(*rulebook, class_of(target)) : nullptr;
  return machine ? find_tier(*rulebook, machine->tier) : nullptr;
}

}  // namespace

bool another_checks_out(const Rulebook* rulebook, const TargetName& target) {
  const Tier* tier = tier_of(rulebook, target);
  return tier && tier->other_checks_out;
}

bool two_check_out(const Rulebook* rulebook, const TargetName& target) {
  const Tier* tier = tier_of(rulebook, target);
  return tier && tier->two_assessors;
}

std::vector<PersonId> everybody_in(const Booking& booking) {
  std::vector<PersonId> out{booking.person, booking.assessor};
  if (!booking.second.empty()) out.push_back(booking.second);
  return out;
}

std::optional<Instant> first_taught(const Memory& memory, const PersonId& assessor, const PersonId& person,
                                    const TargetName& target, Instant now) {
  const std::vector<PersonId> them = memory.aliases(person), teacher = memory.aliases(assessor);
  std::optional<Instant> first;
  for (const std::size_t i : memory.of_kind("booking")) {
    const Entry& entry = memory.entries()[i];
    const Booking& b = *as<Booking>(entry.fact);
    if (b.purpose == Purpose::teach && (!first || b.from < *first) &&
        class_of(b.target) == class_of(target) && has(teacher, b.assessor) && has(them, b.person) &&
        (takes_time(memory, entry, now) || came_before_its_end(memory, entry)))
      first = b.from;
  }
  return first;
}

bool taught(const Memory& memory, const PersonId& assessor, const PersonId& person, const TargetName& target,
            Instant at, Instant now) {
  const auto first = first_taught(memory, assessor, person, target, now);
  return first && *first < at;
}

}  // namespace wm::db
