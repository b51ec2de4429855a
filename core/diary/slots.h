#pragma once
// Free times for a one-on-one: when member, assessor and unit can all be there, and why never, if never.
#include <cstddef>
#include <functional>
#include <set>
#include <vector>

#include "core/diary/intervals.h"
#include "core/records/record.h"
#include "core/time/zone.h"

namespace wm {

/// What has been booked: nobody of them can be anywhere else meanwhile.
struct Booked {
  PersonId person, assessor;
  MachineId machine;
  Interval when;
  PersonId second = {};  // the other assessor, where two witness a check-out; empty: none
  /// Whether somebody takes part, on whichever side.
  bool takes(const PersonId& who) const { return person == who || assesses(who); }
  bool assesses(const PersonId& who) const { return assessor == who || (!second.empty() && second == who); }
  friend bool operator==(const Booked&, const Booked&) = default;
};

/// When somebody is usually in, on the shop's wall clock: weekday 0 is Monday; minutes of the day, 0 to 1440.
struct WeeklyHours {
  PersonId person;
  int weekday = 0, from_minute = 0, to_minute = 0;
  friend bool operator==(const WeeklyHours&, const WeeklyHours&) = default;
};

/// When somebody is in, where that is more than weekly hours. As joined() makes it.
struct InTimes {
  PersonId person;
  std::vector<Interval> times;
  friend bool operator==(const InTimes&, const InTimes&) = default;
};
/// When a unit can't be used, known beforehand, unlike a lockout.
struct Maintenance {
  MachineId machine;
  Interval when;
  friend bool operator==(const Maintenance&, const Maintenance&) = default;
};

/// What must be so for a slot to fit. In the order in which people ask.
enum class Fit {
  member_ready,
  assessor_able,
  assessor_in,
  two_assessors,  // where two are asked for: that there is another beside the one
  together,
  takes_on,
  unit_in_service,
  member_free,
  assessor_free,
  unit_free
};

/// One question. The predicates are asked about a slot's whole time, and may answer from its two ends.
struct SlotQuestion {
  PersonId person;
  std::vector<PersonId> assessors;  // whoever might; the person among them is left out
  std::vector<MachineId> units;     // the first that fits is taken
  Instant from, to;                 // slots lie within; at most 400 days
  int minutes = 60;                 // a slot's length, 1 to 1440
  int step = 15;                    // slots begin at wall-clock minutes that are multiples of it; divides 60
  Zone zone = Zone::utc();
  std::vector<Booked> booked;
  std::vector<WeeklyHours> hours;
  std::vector<InTimes> in;  // of whoever is named here, instead of `hours`
  std::vector<Maintenance> maintenance;
  std::function<bool(const Interval&)> ready;                  // the person
  std::function<bool(const PersonId&, const Interval&)> able;  // an assessor
  std::function<bool(const MachineId&, const Interval&)> in_service;
  /// Whether the person may be booked with an assessor then, or with two (else the second is empty); empty:
  /// any may.
  std::function<bool(const PersonId&, const PersonId&, const Interval&)> together = {};
  /// Whether it is within what an assessor takes on; empty: anything is.
  std::function<bool(const PersonId&, const Interval&)> takes_on = {};
  /// Whether a slot has two of the assessors, both there all the time; empty: one is enough.
  std::function<bool(const Interval&)> two_assessors = {};
};

struct Slot {
  Interval when;
  PersonId assessor;
  MachineId unit;
  Interval assessor_in;   // the stretch of the assessor's hours that it lies in; of two, of both
  std::size_t units = 1;  // how many units would do
  PersonId second = {};   // after the assessor in the list; empty where one is asked for
  friend bool operator==(const Slot&, const Slot&) = default;
};

/// Why there is no slot: what is so at no time at all, and what, were it so throughout, would by itself make
/// one. Where two assessors are asked for, what is said of an assessor is never so where it is so of none,
/// and would help were it so of all; `two_assessors` is never so where at no time any two could come, and
/// would help where there are slots with one.
struct WhyNone {
  std::set<Fit> never;
  std::set<Fit> would_help;
  friend bool operator==(const WhyNone&, const WhyNone&) = default;
};

/// Every slot that fits, in order of (from, place of the assessor in the list, place of the second); one for
/// each assessor and time. Where two are asked for, one for each two of them, whichever is named first: every
/// pair is found.
std::vector<Slot> fitting(const SlotQuestion& question);
/// The same, one for each unit that would do.
std::vector<Slot> fitting_units(const SlotQuestion& question);
/// Of what `fitting` gives, few enough to read: of each assessor's, the earliest, then the earliest that
/// begins when that one is over, and so on, so that hours are filled without gaps. Of slots with two, those
/// in which one of them has none yet at that time.
std::vector<Slot> side_by_side(const std::vector<Slot>& slots);
WhyNone why_none(const SlotQuestion& question);

/// The stretches in which somebody is in that overlap [from, to), in order, those that touch made one. They
/// come and go by the clock on the wall, so on the days on which it is put forward or back their hours are of
/// another length; of a time that comes twice the first counts.
std::vector<Interval> times_in(const Zone& zone, const std::vector<WeeklyHours>& hours,
                               const PersonId& person, Instant from, Instant to);

}  // namespace wm
