#include "app/checkouts/one_on_ones.h"

namespace wm::app {
namespace {

OneOnOne from_booking(const BookingLine& line) {
  const db::Booking& b = line.booking;
  return {line.id,      b.person,       b.assessor,       b.machine, b.target, Interval{b.from, b.to},
          line.turnout, line.signed_as, line.signed_sheet};
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
