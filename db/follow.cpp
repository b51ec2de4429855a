#include "db/follow.h"

#include <algorithm>

#include "db/diary/diary.h"

namespace wm::db {
namespace {

struct Follow {
  const Case& c;
  Plan& plan;

  void operator()(const Booking& f) const {
    if (f.purpose == Purpose::check_out && !f.held_through) end_waits(f);
  }
  void operator()(const Confirmed& f) const {
    if (const Booking* booking = c.memory.live<Booking>(f.booking);
        booking != nullptr && booking->purpose == Purpose::check_out)
      end_waits(*booking);
  }
  void operator()(const Attendance& f) const {
    const Booking* booking = c.memory.live<Booking>(f.booking);
    if (f.turnout == Turnout::not_come || booking == nullptr || !booking->held_through ||
        c.memory.about<Confirmed>(f.booking) != nullptr)
      return;
    plan.facts.emplace_back(ShopFact(Confirmed{f.booking}));
    (*this)(Confirmed{f.booking});
  }
  void operator()(const Cancel& f) const {
    const Booking* booking = c.memory.live<Booking>(f.booking);
    if (booking == nullptr || !waits(c.memory, booking->person, class_of(booking->target)).empty()) return;
    for (const Waiting& each : ended_by(f.booking, *booking)) plan.facts.emplace_back(ShopFact(each));
  }
  /// What was struck out: a cancellation, so that it is booked after all, or a booking made in error.
  void operator()(const StrikeOut& f) const {
    const Entry* struck = c.memory.find(f.record);
    if (struck == nullptr) return;
    if (const auto* cancel = as<Cancel>(struck->fact)) {
      const Booking* booking = c.memory.live<Booking>(cancel->booking);
      const bool is_certain = booking != nullptr && (!booking->held_through ||
                                                     c.memory.about<Confirmed>(cancel->booking) != nullptr);
      if (is_certain && booking->purpose == Purpose::check_out) end_waits(*booking);
    } else if (as<Booking>(struck->fact) != nullptr) {
      (*this)(Cancel{f.record, {}});
    }
  }
  template <class F>
  void operator()(const F&) const {}

  void end_waits(const Booking& f) const {
    for (const Entry* each : waits(c.memory, f.person, class_of(f.target)))
      plan.facts.emplace_back(ShopFact(WaitingEnd{each->id}));
  }

  /// What the booking ended, or those that it has moved; `plan.since` becomes the earliest.
  std::vector<Waiting> ended_by(const RecordId& id, const Booking& booking) const {
    std::vector<Waiting> out;
    for (const std::size_t i : c.memory.of_kind("waiting")) {
      const Entry& place = c.memory.entries()[i];
      const Waiting& waiting = *as<Waiting>(place.fact);
      const Entry* end = c.memory.about<WaitingEnd>(place.id);
      if (place.voided || end == nullptr || !c.same(waiting.person, booking.person) ||
          class_of(waiting.target) != class_of(booking.target) || !came_with(*end, id))
        continue;
      out.push_back(waiting);
      plan.since = std::min(plan.since.value_or(place.at), place.at);
    }
    return out;
  }

  bool came_with(const Entry& end, RecordId booking) const {
    while (!booking.empty()) {
      const Entry* made = c.memory.find(booking);
      const auto* fact = made == nullptr ? nullptr : as<Booking>(made->fact);
      if (fact == nullptr) return false;
      if (made->commit == end.commit) return true;
      for (const std::size_t i : c.memory.referring_to(booking))
        if (const Entry& each = c.memory.entries()[i];
            each.commit == end.commit && as<Confirmed>(each.fact) != nullptr)
          return true;
      booking = fact->instead_of;
    }
    return false;
  }
};

}  // namespace

void add_what_follows(const Case& c, const ShopFact& fact, Plan& plan) {
  if (!c.founding) std::visit(Follow{c, plan}, fact);
}

std::vector<const Entry*> waits(const Memory& memory, const PersonId& person,
                                std::string_view machine_class) {
  const std::vector<PersonId> them = memory.aliases(person);
  std::vector<const Entry*> out;
  for (const std::size_t i : memory.of_kind("waiting")) {
    const Entry& entry = memory.entries()[i];
    const Waiting& waiting = *as<Waiting>(entry.fact);
    if (!entry.voided && has(them, waiting.person) && class_of(waiting.target) == machine_class &&
        memory.about<WaitingEnd>(entry.id) == nullptr)
      out.push_back(&entry);
  }
  return out;
}

bool is_what_follows(const AnyFact& fact) {
  return as<WaitingEnd>(fact) != nullptr || as<Waiting>(fact) != nullptr || as<Confirmed>(fact) != nullptr;
}

}  // namespace wm::db
