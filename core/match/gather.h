#pragma once
// A question for everybody, put together from one about each: the same search that offers somebody free times
// says what would serve them.
#include <map>
#include <tuple>

#include "core/match/question.h"

namespace wm {

class Gathering {
 public:
  /// `next_week` must not be before `now`. Zone, bookings and limits are those of the whole.
  Gathering(FitQuestion whole, Instant now);
  /// Somebody who has waited so many days for what `asked` is about. What lapses is found by asking
  /// `asked.ready`: ready now, and before the next week no more.
  void add(const SlotQuestion& asked, const TargetName& target, int days);
  FitQuestion done() && { return std::move(whole_); }

 private:
  OpeningIndex index(const Slot& slot);

  FitQuestion whole_;
  Instant now_;
  std::map<std::tuple<Instant, Instant, PersonId, PersonId, MachineId>, OpeningIndex> openings_;
};

}  // namespace wm
