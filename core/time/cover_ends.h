#pragma once
// When what is good for a period is due, and when it lapses, by the day on which it happened: asked over and
// over for the same few periods.
#include <optional>
#include <vector>

#include "core/time/period.h"
#include "core/time/times.h"
#include "core/time/zone.h"

namespace wm {

class CoverEnds {
 public:
  CoverEnds(const Zone& zone, Period valid, std::optional<Period> grace);

  struct Ends {
    Instant due;     // it is good up to here
    Instant lapses;  // and covers up to here, grace included
  };
  /// Of what happened on that day.
  Ends of(Day day) const;

  /// Seconds: what happened earlier than so long before an instant has lapsed by then.
  std::int64_t longest() const { return longest_; }

  Period valid() const { return valid_; }
  std::optional<Period> grace() const { return grace_; }

 private:
  Ends worked_out(Day day) const;

  Zone zone_;
  Period valid_;
  std::optional<Period> grace_;
  std::int64_t longest_;
  mutable std::vector<Ends> known_;  // from first_kept on; due at the beginning: not worked out yet
};

}  // namespace wm
