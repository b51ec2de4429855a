#include "app/checkouts/one_on_ones.h"

#include <algorithm>

#include "app/diary/not_countersigned.h"

namespace wm::app {
namespace {

OneOnOne from_booking(const BookingLine& line) {
  const db::Booking& b = line.booking;
  return {line.id,      b.person,       b.assessor,        b.machine, b.target, Interval{b.from, b.to},
          line.turnout, line.signed_as, line.signed_sheet, {},        b.second};
}

/// Each with the one that it is for, or by itself.
void add_in_hand(const Session& session, std::vector<OneOnOne>& all) {
  for (db::OpenSheet& open : session.store().open_sheets()) {
    const auto found = std::ranges::find_if(all, [&](const OneOnOne& one) {
      return !one.signed_as && !one.open && class_of(one.target) == class_of(open.sheet.target) &&
             session.joined(one.person) == session.joined(open.sheet.person);
    });
    OneOnOne alone;
    alone.person = open.sheet.person;
    alone.machine = open.sheet.machine;
    alone.target = open.sheet.target;
    OneOnOne& one = found != all.end() ? *found : all.emplace_back(std::move(alone));
    one.open = std::move(open);
  }
}

/// Each with the one that it is for, or by itself.
void add_not_countersigned(const Session& session, std::vector<OneOnOne>& all) {
  for (const NotCountersigned& missing : not_countersigned(session)) {
    const auto found = std::ranges::find_if(all, [&](const OneOnOne& one) {
      return one.signed_sheet && one.signed_sheet->checkout == missing.entry->id;
    });
    if (found != all.end()) {
      found->not_countersigned = true;
      continue;
    }
    OneOnOne alone;
    alone.person = missing.checkout->person;
    alone.assessor = missing.checkout->assessor;
    alone.machine = missing.marks->machine;
    alone.target = missing.machine_class;
    alone.signed_as = *missing.checkout;
    alone.signed_sheet = *missing.marks;
    alone.not_countersigned = true;
    all.push_back(std::move(alone));
  }
}

}  // namespace

std::vector<OneOnOne> one_on_ones(const Session& session) {
  const Zone& zone = session.zone();
  const Day today = zone.day(session.now());
  std::vector<OneOnOne> now, before;
  for (const BookingLine& line : bookings(session, {zone.start(today + -14), zone.start(today + 1)})) {
    if (line.turnout == db::Turnout::not_come) continue;
    if (zone.day(line.booking.from) == today)
      now.push_back(from_booking(line));
    else if (!line.signed_as && line.booking.purpose == db::Purpose::check_out)
      before.push_back(from_booking(line));
  }
  now.insert(now.end(), before.rbegin(), before.rend());
  if (!session.known()) add_in_hand(session, now);
  add_not_countersigned(session, now);
  return now;
}

OneOnOne without_booking(Session& session, const PersonId& person, const TargetName& target) {
  OneOnOne out;
  out.person = person;
  out.target = target;
  Decider& decider = session.decider(std::nullopt);
  if (session.seated() && decider.able_to_assess(session.seated()->id, target, session.now()))
    out.assessor = session.seated()->id;
  for (const Unit& unit : units(session)) {
    if (unit.machine_class != class_of(target)) continue;
    const bool in_service = decider.may_start("", unit.id, "", session.now(), false, {}, {}).lockouts.empty();
    if (out.machine.empty() || in_service) out.machine = unit.id;
    if (in_service) break;
  }
  return out;
}

}  // namespace wm::app
