#pragma once
// Free times for one person on one machine, from what the store knows.
#include <vector>

#include "app/session.h"
#include "core/diary/slots.h"

namespace wm::app {

/// The question behind every offer: from now on, or from the beginning of a later day, for so many days; what
/// has been booked, who is usually in, and the rules as they are known now. Valid until the next commit.
SlotQuestion slot_question(Session& session, const PersonId& person, const TargetName& target, Day first,
                           int days);

/// One-on-ones that could be booked, in order of time, side by side; from now through `days_ahead` days on.
std::vector<db::Booking> fitting_slots(Session& session, const PersonId& person, const TargetName& target,
                                       int days_ahead);

db::Booking booking_of(const Slot& slot, const PersonId& person, const TargetName& target);

}  // namespace wm::app
