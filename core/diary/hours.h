#pragma once
// Hours by the clock on the wall: a shop's opening and staffed hours, an assessor's, with days that are
// otherwise; and what of them is free. Days on which clocks change have 23 or 25 hours, or another number,
// and hours on them another length.
#include <optional>
#include <span>
#include <vector>

#include "core/diary/slots.h"

namespace wm {

/// Minutes of a civil day as its wall clock shows them, 0 to 1440, from < to. What lies in an hour that the
/// clock leaves out begins or ends at the jump, and may be nothing; of minutes shown twice the first are
/// meant.
struct WallStretch {
  int from_minute = 0, to_minute = 0;
  friend bool operator==(const WallStretch&, const WallStretch&) = default;
};
/// Weekday 0 is Monday.
struct OnWeekday {
  int weekday = 0;
  WallStretch when;
  friend bool operator==(const OnWeekday&, const OnWeekday&) = default;
};
/// Days on which other hours hold than the week's: none at all where the shop is closed or somebody is away.
struct OtherDays {
  Day first, last;
  std::vector<WallStretch> hours;
  friend bool operator==(const OtherDays&, const OtherDays&) = default;
};

struct Schedule {
  std::vector<OnWeekday> weekly;
  std::vector<OnWeekday> breaks;  // cut out of the week's hours
  std::vector<OtherDays> other;   // the last that covers a day counts; its hours are taken as they stand
  std::vector<Interval> busy;     // cut out of everything
  friend bool operator==(const Schedule&, const Schedule&) = default;
};

/// The stretches of a schedule that overlap [from, to), whole, in order, those that touch made one, over
/// midnight too.
std::vector<Interval> times_of(const Zone& zone, const Schedule& schedule, Instant from, Instant to);

/// At most `minutes` from the beginning of a stretch of one-on-ones to its end; a break of `rest` minutes or
/// more ends a stretch.
struct Stretch {
  int minutes = 0, rest = 0;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};
/// What an assessor takes on, beside their hours. What is booked already counts too, and stays.
struct AssessorLimits {
  PersonId assessor;
  std::optional<int> longest_day;  // minutes of one-on-ones given a day
  std::optional<Stretch> stretch;
  friend bool operator==(const AssessorLimits&, const AssessorLimits&) = default;
};

/// How long a one-on-one on a machine class lasts, 1 to 1440 minutes.
struct ClassMinutes {
  std::string machine_class;
  int minutes = 60;
  friend bool operator==(const ClassMinutes&, const ClassMinutes&) = default;
};
struct AssessorHours {
  PersonId assessor;
  Schedule schedule;
  std::optional<int> longest_day;
  std::optional<Stretch> stretch;
  friend bool operator==(const AssessorHours&, const AssessorHours&) = default;
};

/// Everything about hours that a shop may have said.
struct ShopHours {
  std::optional<Schedule> open;     // none: at all hours
  std::optional<Schedule> staffed;  // none: whenever it is open
  Schedule two_on_duty;             // when two adults or more are on duty at once
  std::vector<AssessorHours> assessors;
  std::vector<Maintenance> maintenance;
  std::vector<ClassMinutes> lengths;
  friend bool operator==(const ShopHours&, const ShopHours&) = default;
};

/// As its class has it; an hour where nothing is said.
int minutes_for(const ShopHours& hours, const TargetName& target);
/// When a one-on-one can take place with an assessor: they are in, and the shop is open and staffed. As
/// times_of.
std::vector<Interval> times_with(const Zone& zone, const ShopHours& hours, const PersonId& assessor,
                                 Instant from, Instant to);
/// When the shop is open and staffed. As times_of; all of time where neither is said.
std::vector<Interval> times_open(const Zone& zone, const ShopHours& hours, Instant from, Instant to);
std::vector<AssessorLimits> limits_of(const ShopHours& hours);
/// Fills in a question's length, assessors, when they are in, and which units are out of use when.
void ask_hours(SlotQuestion& question, const ShopHours& hours, const TargetName& target);

}  // namespace wm
