#pragma once
// Tonight's one-on-ones, and those still open.
#include <QString>
#include <optional>
#include <vector>

#include "app/diary/bookings.h"
#include "app/session.h"
#include "core/sheet/result.h"

namespace wm::app {

/// One person on one machine, with or without a booking.
struct OneOnOne {
  std::optional<RecordId> booking;
  PersonId person, assessor;
  MachineId machine;
  TargetName target;
  std::optional<Interval> when;
  std::optional<db::Turnout> turnout;
  std::optional<Checkout> signed_as;
  std::optional<db::SheetMarks> signed_sheet;
  std::optional<db::OpenSheet> open = {};  // the sheet in hand, of whatever revision
  PersonId second = {};                    // the other assessor who is booked; empty: nobody

  bool not_countersigned = false;  // signed, and the member has not said that they were shown the cautions

  /// The booking, or who is on what; with the check-out where one is signed without a booking.
  std::string key() const {
    if (booking) return *booking;
    return person + '\n' + target + (signed_sheet ? '\n' + signed_sheet->checkout : std::string());
  }
};

/// Today's in order of time, then those of the last two weeks that nobody signed, the latest first, then run
/// sheets in hand without any of these, then check-outs that their members have not countersigned; people who
/// did not come are left out.
std::vector<OneOnOne> one_on_ones(const Session& session);
/// Without a booking: on the class's first unit that is in service, with whoever sits here if they are able.
OneOnOne without_booking(Session& session, const PersonId& person, const TargetName& target);

}  // namespace wm::app
