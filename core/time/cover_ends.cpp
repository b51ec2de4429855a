#include "core/time/cover_ends.h"

namespace wm {

namespace {

/// The days for which ends are kept: those on which a shop's records lie, from 1990 to 2100.
constexpr Day first_kept{7305};
constexpr std::size_t days_kept = 40'000;

/// No fewer than the period takes, from the first second of its first day, whatever the clocks do.
std::int64_t seconds(Period period) {
  const std::int64_t days =
      period.unit == PeriodUnit::days ? period.count : (period.count + 1) * std::int64_t{31};
  return (days + 4) * 86400;
}

}  // namespace

CoverEnds::CoverEnds(const Zone& zone, Period valid, std::optional<Period> grace)
    : zone_(zone), valid_(valid), grace_(grace), longest_(seconds(valid) + (grace ? seconds(*grace) : 0)) {}

CoverEnds::Ends CoverEnds::of(Day day) const {
  const auto place = static_cast<std::size_t>(day.number - first_kept.number);
  if (day < first_kept || place >= days_kept) return worked_out(day);
  if (place >= known_.size()) known_.resize(place + 1, {beginning, beginning});
  Ends& ends = known_[place];
  if (ends.due == beginning) ends = worked_out(day);
  return ends;
}

CoverEnds::Ends CoverEnds::worked_out(Day day) const {
  const Day due_day = end(day, valid_);
  const Instant due = zone_.start(due_day + 1);
  return {due, grace_ ? zone_.start(end(due_day, *grace_) + 1) : due};
}

}  // namespace wm
