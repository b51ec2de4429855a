#include <algorithm>
#include <map>
#include <utility>

#include "core/match/answer.h"

namespace wm {
namespace {

struct DayOfOne {
  std::vector<Interval> busy;
  bool comes_anyway = false;
};

/// The days of everybody who assesses some opening, with what is booked and what is proposed on each.
class Days {
 public:
  explicit Days(const FitQuestion& question) : zone_(question.zone) {
    for (const Opening& each : question.openings) {
      days_[each.assessor];
      if (!each.second.empty()) days_[each.second];
    }
    for (const Booked& each : question.booked) {
      add(each.person, each.when, true);
      add(each.assessor, each.when, true);
      add(each.second, each.when, true);
    }
  }
  /// Nothing where it is nobody who assesses an opening.
  void add(const PersonId& person, const Interval& when, bool booked = false) {
    const auto found = days_.find(person);
    if (found == days_.end()) return;
    DayOfOne& day = found->second[zone_.day(when.from)];
    day.busy.push_back(when);
    day.comes_anyway = day.comes_anyway || booked;
  }
  void count(Measures& into) {
    for (auto& [person, days] : days_)
      for (auto& [date, day] : days) {
        if (!day.comes_anyway) ++into.trips;
        into.gaps += idle_seconds(day.busy) / 60;
      }
  }

 private:
  static std::int64_t idle_seconds(std::vector<Interval>& busy) {
    std::sort(busy.begin(), busy.end(), [](const Interval& a, const Interval& b) { return a.from < b.from; });
    std::int64_t idle = 0;
    Instant over = busy.front().from;
    for (const Interval& each : busy) {
      idle += std::max<std::int64_t>(0, each.from.seconds - over.seconds);
      over = std::max(over, each.to);
    }
    return idle;
  }

  const Zone& zone_;
  std::map<PersonId, std::map<Day, DayOfOne>> days_;
};

}  // namespace

bool comes_first(const FitQuestion& question, const Waiter& waiter) {
  return waiter.days > question.longest_wait || (waiter.lapses && *waiter.lapses <= question.next_week);
}

std::int64_t of(const Measures& measures, Aim aim) {
  switch (aim) {
    case Aim::first:
      return measures.first;
    case Aim::served:
      return measures.served;
    case Aim::waited:
      return measures.waited;
    case Aim::trips:
      return measures.trips;
    case Aim::gaps:
      return measures.gaps;
  }
  return 0;
}

bool better(const Measures& a, const Measures& b) {
  for (const Aim aim : all_aims) {
    const bool fewer = aim == Aim::trips || aim == Aim::gaps;
    if (of(a, aim) != of(b, aim)) return (of(a, aim) < of(b, aim)) == fewer;
  }
  return false;
}

Measures measure(const FitQuestion& question, const std::vector<Placed>& placed) {
  Measures out;
  Days days(question);
  for (const Placed& each : placed) {
    const Waiter& waiter = question.waiters[each.waiter];
    const Opening& opening = question.openings[each.opening];
    out.first += comes_first(question, waiter);
    out.served += 1;
    out.waited += waiter.days;
    days.add(opening.assessor, opening.when);
    days.add(opening.second, opening.when);
    days.add(waiter.person, opening.when);
  }
  days.count(out);
  return out;
}

}  // namespace wm
