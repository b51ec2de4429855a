// One-on-ones: nobody and no unit is in two at once, only with who can on what can be used, and in hours.
#include <algorithm>

#include "core/diary/adults.h"
#include "core/diary/limits.h"
#include "db/check/checks.h"
#include "db/diary/diary.h"

namespace wm::db {
namespace {

bool covered(const std::vector<Interval>& times, const Interval& when) {
  return std::any_of(times.begin(), times.end(),
                     [&](const Interval& each) { return each.from <= when.from && when.to <= each.to; });
}

std::string machine_words(const Case& c, const MachineId& id) { return "The machine " + unit_words(c, id); }

Expected<void> check_times(const Case& c, const Booking& f) {
  if (f.from < first_instant || f.to > last_instant)
    return refuse("from", "The booking lies outside the years 1900 to 2999.", "Check the year.");
  if (f.to <= f.from) return refuse("to", "The booking ends before it begins.", "Choose a later end.");
  if (f.to <= c.at) return refuse("from", "The booking lies in the past.", "Choose a time to come.");
  if (f.to > f.from + 86400)
    return refuse("to", "The booking is longer than a day.", "Choose an earlier end.");
  if (f.held_through && (*f.held_through <= c.at || f.from < *f.held_through))
    return refuse("held_through", "A time is held for a while, and no longer than to its beginning.",
                  "Hold it through a moment between now and then.");
  return {};
}

/// That what this one moves can be moved. What was cancelled may be booked again.
Expected<void> check_moved(const Case& c, const Booking& f) {
  if (f.instead_of.empty()) return {};
  const Booking* moved = c.memory.live<Booking>(f.instead_of);
  if (moved == nullptr)
    return refuse("instead_of", "There is no booking with the id '" + f.instead_of + "'.",
                  "Choose one from the list.");
  if (c.memory.about<Booking>(f.instead_of) != nullptr)
    return refuse("instead_of", "This booking has been moved already.",
                  "Choose the one that took its place.");
  if (c.same(moved->person, f.person) && class_of(moved->target) == class_of(f.target)) return {};
  return refuse("instead_of", "A booking is moved for the same person, on the same machine.",
                "Cancel it, and book another.");
}

/// In which part of a booking somebody is, and whoever counts as them.
struct Side {
  const char* where;
  PersonId person;
  std::vector<PersonId> aliases;
};

/// The assessors first, as it is more often they who are asked for twice.
std::vector<Side> sides_of(const Case& c, const Booking& f) {
  std::vector<Side> out;
  const auto add = [&](const char* where, const PersonId& who) {
    if (!who.empty()) out.push_back({where, who, c.memory.aliases(who)});
  };
  add("assessor", f.assessor);
  add("second", f.second);
  add("person", f.person);
  return out;
}

/// The side whose person is any of these; null where none is.
const Side* side_with(const std::vector<Side>& sides, const std::vector<PersonId>& people) {
  const auto found = std::ranges::find_if(sides, [&](const Side& side) {
    return std::ranges::any_of(people, [&](const PersonId& each) { return has(side.aliases, each); });
  });
  return found == sides.end() ? nullptr : &*found;
}

Expected<void> check_not_booked(const Case& c, const Booking& f, const RecordId& but_for = {}) {
  const std::vector<Side> sides = sides_of(c, f);
  for (const std::size_t i : c.memory.of_kind("booking")) {
    const Entry& entry = c.memory.entries()[i];
    const Booking& other = *as<Booking>(entry.fact);
    if (other.to <= f.from || f.to <= other.from || entry.id == f.instead_of || entry.id == but_for) continue;
    const bool same_machine = other.machine == f.machine;
    const Side* same = side_with(sides, everybody_in(other));
    if ((!same_machine && same == nullptr) || !takes_time(c.memory, entry, c.now)) continue;
    return refuse(same_machine ? "machine" : same->where,
                  (same_machine ? machine_words(c, f.machine) : c.memory.name(same->person)) +
                      " is booked already from " + said(c, other.from) + " to " + said(c, other.to) + ".",
                  "Choose another time, or cancel that booking.");
  }
  return {};
}

/// Whoever is at a machine now, and that machine, are not free now.
Expected<void> check_not_at_machine(const Case& c, const Booking& f) {
  if (c.now < f.from) return {};
  const std::vector<Side> sides = sides_of(c, f);
  for (const AtMachine& each : at_machines(c.memory, c.now)) {
    // What was booked, and is under way.
    if (each.machine == f.machine && has(sides.back().aliases, each.person)) continue;
    const Side* there = side_with(sides, {each.person, each.supervisor});
    if (each.machine != f.machine && there == nullptr) continue;
    return refuse(each.machine == f.machine ? "machine" : there->where,
                  at_machine_words(c, each.person, each), "Enter that it was left, or choose a later time.");
  }
  return {};
}

Expected<void> check_free(const Case& c, const Booking& f, const RecordId& but_for = {}) {
  return check_not_booked(c, f, but_for).and_then([&] { return check_not_at_machine(c, f); });
}

/// A booking that stands, and is not over, as if it were moved to where it is: it is not in its own way.
std::optional<Booking> moved_to_itself(const Case& c, const RecordId& id) {
  const Booking* booking = id.empty() ? nullptr : c.memory.live<Booking>(id);
  if (booking == nullptr || booking->to <= c.now) return std::nullopt;
  Booking again = *booking;
  again.instead_of = id;
  return again;
}

Expected<void> check_in_service(const Case& c, const Booking& f, const ShopHours& hours) {
  for (const std::size_t i : c.memory.lockouts_of(f.machine)) {
    const Entry& lockout = c.memory.entries()[i];
    if (lockout.voided || lockout.at > c.now || c.memory.about<Release>(lockout.id) != nullptr) continue;
    return refuse("machine", machine_words(c, f.machine) + " is out of service.", "Choose another machine.");
  }
  for (const Maintenance& each : hours.maintenance)
    if (each.machine == f.machine && overlap(each.when, {f.from, f.to}))
      return refuse("machine",
                    machine_words(c, f.machine) + " has maintenance from " + said(c, each.when.from) +
                        " to " + said(c, each.when.to) + ".",
                    "Choose another machine, or another time.");
  return {};
}

/// Whether hours of the week that were said of an assessor have all been struck out: then they are in at
/// none.
bool hours_were_taken_back(const Case& c, const PersonId& assessor) {
  const std::vector<PersonId> them = c.memory.aliases(assessor);
  return std::ranges::any_of(c.memory.of_kind("hours"), [&](std::size_t i) {
    const Entry& entry = c.memory.entries()[i];
    return entry.voided && has(them, as<Hours>(entry.fact)->person);
  });
}

/// An assessor of whom no hours of the week are said may be booked by arrangement, but never while they are
/// busy, and on days of which other hours are said only within those.
bool assessor_is_in(const Case& c, const ShopHours& hours, const PersonId& assessor, const Interval& when) {
  const auto theirs = std::ranges::find(hours.assessors, assessor, &AssessorHours::assessor);
  const bool any = theirs != hours.assessors.end();
  const bool by_arrangement =
      (!any || theirs->schedule.weekly.empty()) && !hours_were_taken_back(c, assessor);
  if (!by_arrangement) return any && covered(times_with(c.zone, hours, assessor, when.from, when.to), when);
  if (!any) return true;
  Schedule schedule = theirs->schedule;
  schedule.weekly = always().weekly;
  return covered(times_of(c.zone, schedule, when.from, when.to), when);
}

/// Each who assesses in it, with the part that a refusal names.
std::vector<std::pair<const char*, PersonId>> assessing(const Booking& f) {
  std::vector<std::pair<const char*, PersonId>> out{{"assessor", f.assessor}};
  if (!f.second.empty()) out.emplace_back("second", f.second);
  return out;
}

Expected<void> check_hours(const Case& c, const Booking& f, const ShopHours& hours) {
  const Interval when{f.from, f.to};
  if (!covered(times_open(c.zone, hours, f.from, f.to), when))
    return refuse("from",
                  "The shop is not open and staffed from " + said(c, f.from) + " to " + said(c, f.to) + ".",
                  "Choose another time; or let a manager enter other hours for that day.");
  const Interval days{f.from - 2 * 86400, f.to + 2 * 86400};
  for (const auto& [where, who] : assessing(f)) {
    const PersonId assessor = c.memory.joined(who);
    if (!assessor_is_in(c, hours, assessor, when))
      return refuse(
          where,
          c.memory.name(who) + " is not in, or busy, from " + said(c, f.from) + " to " + said(c, f.to) + ".",
          "Choose another time or assessor; or let a manager enter other hours of theirs.");
    for (const AssessorLimits& limits : limits_of(hours))
      if (limits.assessor == assessor &&
          !within_limits(c.zone, limits, booked(c.memory, days, c.now, f.instead_of), when))
        return refuse(where, "This is more than " + c.memory.name(who) + " takes on that day.",
                      "Choose another time or assessor.");
  }
  return {};
}

Expected<void> check_together(const Case& c, const Booking& f, const ShopHours& hours) {
  const auto young = [&](const PersonId& who, Instant at) {
    const auto adult_from = turns_18(c.memory, c.zone, who);
    return adult_from && at < *adult_from;
  };
  std::vector<PersonId> together;
  for (const PersonId& each : everybody_in(f)) together.push_back(c.memory.joined(each));
  if (!enough_adults(c.zone, hours, together, {f.from, f.to}, young))
    return refuse("person",
                  "Somebody under 18 is booked only while two adults are in the building, and by the hours "
                  "that are entered there is one.",
                  "Choose a time with two on duty, or one at which another adult is in.");
  if (f.purpose != Purpose::check_out || !another_checks_out(c.decider().in_force(f.from), f.target))
    return {};
  for (const auto& [where, who] : assessing(f))
    if (taught(c.memory, who, f.person, f.target, f.from, c.now))
      return refuse(where,
                    c.memory.name(who) + " taught them on this machine, and in its tier another checks out.",
                    "Choose another assessor.");
  return {};
}

/// As many assessors as the tier asks for.
Expected<void> check_two(const Case& c, const Booking& f) {
  const bool asked = f.purpose == Purpose::check_out && two_check_out(c.decider().in_force(f.from), f.target);
  if (!asked || !f.second.empty()) return {};
  return refuse("second", "Two assessors witness a check-out here, and this booking has one.",
                "Choose a time at which a second assessor is there too.");
}

/// Where none is asked for nobody is booked as the second: whose time is taken is needed. Whoever would like
/// to watch can, and mark it apart.
Expected<void> check_not_too_many(const Case& c, const Booking& f) {
  if (f.second.empty()) return {};
  if (f.purpose != Purpose::check_out)
    return refuse("second", "Only a check-out is booked with two assessors.", "Leave the second out.");
  if (two_check_out(c.decider().in_force(f.from), f.target)) return {};
  return refuse("second", "One assessor witnesses a check-out here.",
                "Leave the second out; whoever watches too can mark it apart.");
}

Expected<void> check_rest(const Case& c, const Booking& f) {
  const auto rule = not_come_rule(diary_rules(c.memory));
  if (!rule) return {};
  // What is moved has been booked before; unless they stayed away from it.
  const Entry* came = c.memory.about<Attendance>(f.instead_of);
  if (!f.instead_of.empty() && (!came || as<Attendance>(came->fact)->turnout != Turnout::not_come)) return {};
  const auto rests = rests_through(*rule, days_not_come(c.memory, c.zone, f.person));
  if (!rests || *rests < c.zone.day(c.now)) return {};
  return refuse("person",
                c.memory.name(f.person) + " was booked and did not come " + std::to_string(rule->most) +
                    " times; by the shop's rule nothing is booked for them through " + said(*rests) + ".",
                "Book it after that day; a manager may strike out what was wrong.");
}

/// When it begins; or now, where it is under way.
Expected<void> check_able(const Case& c, const Booking& f) {
  const bool practice = f.purpose == Purpose::practise;
  const Instant at = std::max(f.from, c.now);
  for (const auto& [where, who] : assessing(f)) {
    const PersonId assessor = c.memory.joined(who);
    if (practice ? c.decider().able_to_supervise(assessor, f.target, at)
                 : c.decider().able_to_assess(assessor, f.target, at))
      continue;
    return refuse(where,
                  c.memory.name(who) + " is not able to " + (practice ? "supervise" : "assess") + " '" +
                      f.target + "' on " + said(c, at) + ".",
                  "Choose an assessor who is.");
  }
  return {};
}

}  // namespace

Expected<void> check_booking(const Case& c, const Booking& f) {
  if (auto fine = check_times(c, f); !fine) return fine;
  if (c.same(f.person, f.assessor))
    return refuse("assessor", "Nobody is booked with themself.", "Choose another assessor.");
  if (!f.second.empty() && (c.same(f.second, f.person) || c.same(f.second, f.assessor)))
    return refuse("second", "The second assessor is somebody else than the member and the first.",
                  "Choose another assessor.");
  if (class_of(f.target) != c.memory.class_of_machine(f.machine))
    return refuse("machine", machine_words(c, f.machine) + " is not of '" + f.target + "'.",
                  "Choose a machine of that class.");
  if (auto fine = check_moved(c, f); !fine) return fine;
  if (auto fine = check_free(c, f); !fine) return fine;
  if (c.founding) return {};
  const ShopHours hours = shop_hours(c.memory);
  return check_in_service(c, f, hours)
      .and_then([&] { return check_two(c, f); })
      .and_then([&] { return check_not_too_many(c, f); })
      .and_then([&] { return check_able(c, f); })
      .and_then([&] { return check_hours(c, f, hours); })
      .and_then([&] { return check_together(c, f, hours); })
      .and_then([&] { return check_rest(c, f); });
}

Expected<void> check_revived(const Case& c, const StrikeOut& f) {
  const Entry* struck = c.memory.find(f.record);
  RecordId id;
  if (const auto* cancel = as<Cancel>(struck->fact)) id = cancel->booking;
  if (const auto* moved = as<Booking>(struck->fact)) id = moved->instead_of;
  if (const auto* came = as<Attendance>(struck->fact)) id = came->booking;
  const auto revived = moved_to_itself(c, id);
  return revived ? check_free(c, *revived, f.record) : Expected<void>{};
}

Expected<void> check_still_free(const Case& c, const RecordId& booking) {
  const auto again = moved_to_itself(c, booking);
  return again ? check_free(c, *again) : Expected<void>{};
}

Expected<void> check_attendance(const Case& c, const Attendance& f) {
  const Entry* before = c.memory.about<Attendance>(f.booking);
  const Day day = c.zone.day(c.memory.live<Booking>(f.booking)->from);
  if (f.turnout == Turnout::not_come && !c.founding && c.zone.day(c.now) < day)
    return refuse("turnout", "It is on " + said(day) + ", so nobody has stayed away from it yet.",
                  "Cancel it, where they said that they do not come.");
  if (f.turnout == Turnout::not_come || before == nullptr ||
      as<Attendance>(before->fact)->turnout != Turnout::not_come)
    return {};
  const auto booking = moved_to_itself(c, f.booking);
  return booking ? check_not_booked(c, *booking) : Expected<void>{};
}

Expected<void> check_stands(const Case& c, const RecordId& booking) {
  const Entry* entry = c.memory.find(booking);
  Booking again = *as<Booking>(entry->fact);
  // Judged as if it were moved to where it is: it is not in its own way.
  again.instead_of = booking;
  again.held_through.reset();
  if (auto fine = check_names(c, ShopFact(again)); !fine) return fine;
  const ShopHours hours = shop_hours(c.memory);
  return check_free(c, again)
      .and_then([&] { return check_in_service(c, again, hours); })
      .and_then([&] { return check_two(c, again); })
      .and_then([&] { return check_able(c, again); })
      .and_then([&] { return check_hours(c, again, hours); })
      .and_then([&] { return check_together(c, again, hours); });
}

}  // namespace wm::db
