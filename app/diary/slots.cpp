#include "app/diary/slots.h"

#include <algorithm>
#include <map>
#include <memory>
#include <set>

#include "app/diary/bookings.h"
#include "core/diary/adults.h"
#include "core/diary/limits.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

/// What is booked, but for a booking that is to be moved.
std::vector<Booked> booked(const Session& session, const Interval& within, const RecordId& moved) {
  std::vector<Booked> out = session.store().booked(within);
  const db::Entry* entry = moved.empty() ? nullptr : session.entry(moved);
  const auto* booking = entry ? db::as<db::Booking>(entry->fact) : nullptr;
  if (booking)
    std::erase(out, Booked{session.store().joined(booking->person),
                           session.store().joined(booking->assessor),
                           booking->machine,
                           {booking->from, booking->to},
                           booking->second.empty() ? PersonId() : session.store().joined(booking->second)});
  return out;
}

/// Who is under 18 when; each birth date looked for once.
Under18 under_18(const Session& session) {
  using Known = std::map<PersonId, std::optional<Instant>>;
  return [&session, known = std::make_shared<Known>()](const PersonId& who, Instant at) {
    auto found = known->find(who);
    if (found == known->end()) found = known->emplace(who, session.store().turns_18(who)).first;
    return found->second && at < *found->second;
  };
}

void ask_together(SlotQuestion& question, Session& session, const Wish& wish, const ShopHours& hours) {
  std::map<PersonId, Instant> teaches;  // from when on; in a tier that leaves it to another
  if (wish.purpose == db::Purpose::check_out)
    for (const PersonId& each : question.assessors)
      if (const auto first = session.store().first_taught(each, question.person, wish.target))
        teaches[each] = *first;
  question.together = [hours, young = under_18(session), teaches, zone = question.zone, &session,
                       target = wish.target, person = question.person](
                          const PersonId& assessor, const PersonId& second, const Interval& when) {
    std::vector<PersonId> all{person, assessor};
    if (!second.empty()) all.push_back(second);
    const bool taught = std::any_of(all.begin(), all.end(), [&](const PersonId& each) {
      const auto found = teaches.find(each);
      return found != teaches.end() && found->second < when.from;
    });
    if (taught && session.another_checks_out(target, when.from)) return false;
    return enough_adults(zone, hours, all, when, young);
  };
}

/// A check-out in some tiers has two.
void ask_two(SlotQuestion& question, Session& session, const Wish& wish) {
  if (wish.purpose != db::Purpose::check_out) return;
  question.two_assessors = [&session, target = wish.target](const Interval& when) {
    return session.two_check_out(target, when.from);
  };
}

void ask_limits(SlotQuestion& question, const ShopHours& hours) {
  const std::vector<AssessorLimits> limits = limits_of(hours);
  if (limits.empty()) return;
  question.takes_on = [limits, booked = question.booked, zone = question.zone](const PersonId& assessor,
                                                                               const Interval& when) {
    return std::all_of(limits.begin(), limits.end(), [&](const AssessorLimits& each) {
      return each.assessor != assessor || within_limits(zone, each, booked, when);
    });
  };
}

/// Who is at a machine, and the unit, are not free at this moment; they are no one-on-ones and count in no
/// assessor's limits.
void add_started(SlotQuestion& question, const Session& session) {
  const Instant now = session.now();
  for (const db::AtMachine& each : session.store().floor(now).at_machines)
    question.booked.push_back({each.person, each.supervisor, each.machine, {each.since, now + 1}});
}

/// To be taught or to practise, somebody works with a supervisor at both ends of the time.
void ask_supervised(SlotQuestion& question, Decider& decider, const Wish& wish) {
  question.ready = [&decider, target = wish.target, person = question.person](const Interval& when) {
    return decider.rung(person, target, when.from) >= Rung::supervised &&
           decider.rung(person, target, when.to - 1) >= Rung::supervised;
  };
  if (wish.purpose != db::Purpose::practise) return;
  question.able = [&decider, target = wish.target](const PersonId& who, const Interval& when) {
    return decider.able_to_supervise(who, target, when.from) &&
           decider.able_to_supervise(who, target, when.to - 1);
  };
}

}  // namespace

SlotQuestion slot_question(Session& session, const Wish& wish, Day first, int days, const RecordId& moved) {
  SlotQuestion question;
  question.person = session.store().joined(wish.person);
  question.zone = session.zone();
  question.from = std::max(session.now(), session.zone().start(first));
  question.to = std::max(question.from, session.zone().start(first + days));
  for (const Unit& unit : units(session))
    if (unit.machine_class == class_of(wish.target)) question.units.push_back(unit.id);
  const ShopHours hours = session.store().hours();
  ask_hours(question, hours, wish.target);
  // Limits look a little further than the days that are asked about.
  question.booked = booked(session, {question.from - 2 * 86400, question.to + 2 * 86400}, moved);
  ask_limits(question, hours);
  add_started(question, session);
  ask_together(question, session, wish, hours);
  ask_two(question, session, wish);
  // What is true now, whatever date the pages look back to: a booking is for real.
  Decider& decider = session.decider(std::nullopt);
  ask_decider(question, decider, wish.target);
  if (wish.purpose != db::Purpose::check_out) ask_supervised(question, decider, wish);
  return question;
}

namespace {
const PersonId somebody = "somebody else";
}

SlotQuestion question_of_somebody(Session& session, const Wish& wish, Day first, int days) {
  SlotQuestion question = slot_question(session, wish, first, days);
  ShopHours hours = session.store().hours();
  if (!hours.open) {
    hours.open.emplace();
    for (int day = 0; day < 7; ++day) hours.open->weekly.push_back({day, {9 * 60, 21 * 60}});
  }
  const auto theirs = [somebody](const auto& ask) {
    return [somebody, ask](const PersonId& who, const Interval& when) {
      return who == somebody || !ask || ask(who, when);
    };
  };
  question.able = theirs(question.able);
  question.takes_on = theirs(question.takes_on);
  // Where two are asked for, it takes one of those there are beside the one more.
  const auto asks = question.two_assessors;
  bool two = false;
  for (Instant t = question.from; asks && t < question.to && !two; t = t + 86400) two = asks({t, t + 1});
  if (!two) question.assessors.clear(), question.in.clear();
  question.assessors.push_back(somebody);
  question.in.push_back({somebody, times_open(question.zone, hours, question.from, question.to)});
  question.step = 30;
  ask_together(question, session, wish, hours);
  return question;
}

bool has_somebody(const Slot& slot) { return slot.assessor == somebody || slot.second == somebody; }

db::Booking booking_of(const Slot& slot, const Wish& wish) {
  db::Booking out{wish.person,    slot.assessor, slot.unit,   wish.target,
                  slot.when.from, slot.when.to,  wish.purpose};
  out.second = slot.second;
  return out;
}

std::vector<db::Booking> fitting_slots(Session& session, const PersonId& person, const TargetName& target,
                                       int days_ahead) {
  const Wish wish{person, target};
  const Day today = session.zone().day(session.now());
  std::vector<db::Booking> out;
  for (const Slot& slot : side_by_side(fitting(slot_question(session, wish, today, days_ahead + 1))))
    out.push_back(booking_of(slot, wish));
  return out;
}

}  // namespace wm::app
