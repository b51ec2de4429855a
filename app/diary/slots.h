#pragma once
// Free times for one person on one machine, from what the store knows.
#include <vector>

#include "app/session.h"
#include "core/diary/slots.h"

namespace wm::app {

/// What is asked for: a check-out needs all else to be there; to be taught or to practise, somebody may work
/// with a supervisor, and practice needs no more than one.
struct Wish {
  PersonId person;
  TargetName target;
  db::Purpose purpose = db::Purpose::check_out;
};

/// The question behind every offer: from now on, or from the beginning of a later day, for so many days; what
/// has been booked, the shop's hours and the assessors', and the rules as they are known now. `moved`: a
/// booking whose own time is free. Valid until the next commit.
SlotQuestion slot_question(Session& session, const Wish& wish, Day first, int days,
                           const RecordId& moved = {});

/// The same with one assessor who is nobody yet, able to assess it and in whenever the shop is open: from
/// nine to nine where it has said no hours. Where two are asked for, beside those that there are.
SlotQuestion question_of_somebody(Session& session, const Wish& wish, Day first, int days);
/// Whether they are in it.
bool has_somebody(const Slot& slot);

/// One-on-ones that could be booked, in order of time, side by side; from now through `days_ahead` days on.
std::vector<db::Booking> fitting_slots(Session& session, const PersonId& person, const TargetName& target,
                                       int days_ahead);

db::Booking booking_of(const Slot& slot, const Wish& wish);

}  // namespace wm::app
