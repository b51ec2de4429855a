#include "app/diary/slots.h"

#include <algorithm>

#include "app/diary/bookings.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

/// Hours and bookings of an entry that was joined to another are that other's.
std::vector<WeeklyHours> hours(const Session& session) {
  std::vector<WeeklyHours> out;
  for (const db::Entry& entry : session.store().entries()) {
    const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
    const auto* each = fact && !entry.voided ? std::get_if<db::Hours>(fact) : nullptr;
    if (each)
      out.push_back(
          {session.store().joined(each->person), each->weekday, each->from_minute, each->to_minute});
  }
  return out;
}

/// Whoever did not come has left the time free.
std::vector<Booked> booked(const Session& session, const Interval& within) {
  std::vector<Booked> out;
  for (const BookingLine& line : bookings(session, within)) {
    const db::Booking& b = line.booking;
    if (line.turnout == db::Turnout::not_come) continue;
    out.push_back(
        {session.store().joined(b.person), session.store().joined(b.assessor), b.machine, {b.from, b.to}});
  }
  return out;
}

}  // namespace

SlotQuestion slot_question(Session& session, const PersonId& person, const TargetName& target, Day first,
                           int days) {
  SlotQuestion question;
  question.person = session.store().joined(person);
  question.zone = session.zone();
  question.from = std::max(session.now(), session.zone().start(first));
  question.to = std::max(question.from, session.zone().start(first + days));
  for (const Unit& unit : units(session))
    if (unit.machine_class == class_of(target)) question.units.push_back(unit.id);
  question.booked = booked(session, {question.from, question.to});
  question.hours = hours(session);
  for (const WeeklyHours& each : question.hours)
    if (std::find(question.assessors.begin(), question.assessors.end(), each.person) ==
        question.assessors.end())
      question.assessors.push_back(each.person);
  // What is true now, whatever date the pages look back to: a booking is for real.
  ask_decider(question, session.decider(std::nullopt), target);
  return question;
}

db::Booking booking_of(const Slot& slot, const PersonId& person, const TargetName& target) {
  return {person, slot.assessor, slot.unit, target, slot.when.from, slot.when.to, db::Purpose::check_out};
}

std::vector<db::Booking> fitting_slots(Session& session, const PersonId& person, const TargetName& target,
                                       int days_ahead) {
  const Day today = session.zone().day(session.now());
  std::vector<db::Booking> out;
  for (const Slot& slot :
       side_by_side(fitting(slot_question(session, person, target, today, days_ahead + 1))))
    out.push_back(booking_of(slot, person, target));
  return out;
}

}  // namespace wm::app
