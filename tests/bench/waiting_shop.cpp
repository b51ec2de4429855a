#include "waiting_shop.h"

#include <algorithm>
#include <random>
#include <string>

namespace wm {
namespace {

struct OneTarget {
  TargetName name;
  int minutes = 60;
  std::vector<MachineId> units;
  std::vector<PersonId> assessors;
  std::vector<OpeningIndex> openings;
};

class Maker {
 public:
  explicit Maker(const WaitingShop& shop) : shop_(shop), random_(shop.seed) {
    q_.zone = Zone::named("America/New_York").value();
    q_.longest_wait = 60;
    q_.next_week = from_ + std::int64_t{7} * 86400;
  }

  FitQuestion make() {
    make_hours();
    make_targets();
    make_booked();
    for (OneTarget& each : targets_) make_openings(each);
    for (int i = 0; i < shop_.people; ++i) make_waiter(i);
    return q_;
  }

 private:
  int below(int n) { return static_cast<int>(random_() % static_cast<std::uint64_t>(n)); }
  static std::string assessor(int i) { return "assessor " + std::to_string(i); }

  /// Two evenings a week of three hours, and for some a Saturday.
  void make_hours() {
    for (int i = 0; i < shop_.assessors; ++i) {
      const int first = below(5), second = (first + 1 + below(4)) % 5;
      for (const int weekday : {first, second}) {
        const int from = 17 * 60 + 30 * below(3);
        hours_.push_back({assessor(i), weekday, from, from + 180});
      }
      if (below(3) == 0) hours_.push_back({assessor(i), 5, 10 * 60, 14 * 60});
      AssessorLimits limits{assessor(i), {}, {}};
      if (below(3) == 0) limits.longest_day = 180;
      if (limits.longest_day) q_.limits.push_back(limits);
    }
  }

  void make_targets() {
    const int uneven[] = {45, 60, 90};
    for (int i = 0; i < shop_.targets; ++i) {
      OneTarget target{
          "target " + std::to_string(i), shop_.uneven_lengths ? uneven[below(3)] : 60, {}, {}, {}};
      for (int unit = 1 + below(3); unit > 0; --unit)
        target.units.push_back(target.name + ", unit " + std::to_string(unit));
      for (int a = 0; a < shop_.assessors; ++a)
        if (below(3) == 0) target.assessors.push_back(assessor(a));
      targets_.push_back(std::move(target));
    }
  }

  void make_booked() {
    for (int i = 0; i < shop_.people / 8; ++i) {
      const WeeklyHours& hours = hours_[static_cast<std::size_t>(below(static_cast<int>(hours_.size())))];
      const auto times = times_in(q_.zone, hours_, hours.person, from_, to());
      const Interval& stretch = times[static_cast<std::size_t>(below(static_cast<int>(times.size())))];
      const Instant from = stretch.from + 3600 * below(2);
      const OneTarget& target = targets_[static_cast<std::size_t>(below(shop_.targets))];
      q_.booked.push_back(
          {"somebody " + std::to_string(i), hours.person, target.units.front(), {from, from + 3600}});
    }
  }

  Instant to() const { return from_ + std::int64_t{7} * 86400 * shop_.weeks; }

  bool taken(const Opening& opening) const {
    return std::any_of(q_.booked.begin(), q_.booked.end(), [&](const Booked& each) {
      return overlap(each.when, opening.when) &&
             (opening.assesses(each.assessor) || each.machine == opening.unit);
    });
  }

  void make_openings(OneTarget& target) {
    const bool two = shop_.by_two && (&target - targets_.data()) % 3 == 0;
    for (std::size_t i = 0; i < target.assessors.size(); ++i) {
      const auto in = times_in(q_.zone, hours_, target.assessors[i], from_, to());
      if (!two) add_openings(target, in, target.assessors[i], {});
      for (std::size_t j = i + 1; two && j < target.assessors.size(); ++j)
        add_openings(target, common(in, times_in(q_.zone, hours_, target.assessors[j], from_, to())),
                     target.assessors[i], target.assessors[j]);
    }
  }

  void add_openings(OneTarget& target, const std::vector<Interval>& all, const PersonId& assessor,
                    const PersonId& second) {
    const std::int64_t seconds = std::int64_t{60} * target.minutes;
    for (const Interval& in : all)
      for (Instant t = in.from; t + seconds <= in.to; t = t + 900)
        for (const MachineId& unit : target.units) {
          const Opening opening{{t, t + seconds}, assessor, unit, second};
          if (taken(opening)) continue;
          target.openings.push_back(static_cast<OpeningIndex>(q_.openings.size()));
          q_.openings.push_back(opening);
        }
  }

  /// A few targets are what most wait for.
  void make_waiter(int i) {
    const OneTarget& target =
        targets_[static_cast<std::size_t>(std::min(below(shop_.targets), below(shop_.targets)))];
    Waiter waiter{"member " + std::to_string(below(10) == 0 ? i / 2 : i), target.name, below(75), {}, {}};
    if (below(6) == 0) waiter.lapses = from_ + std::int64_t{86400} * (2 + below(40));
    const bool not_on_some_day = below(8) == 0;
    const int weekday = below(7);
    for (const OpeningIndex each : target.openings) {
      const Interval& when = q_.openings[each].when;
      if (waiter.lapses && when.to > *waiter.lapses) continue;
      if (not_on_some_day && (q_.zone.day(when.from).number + 3) % 7 == weekday) continue;
      waiter.fits.push_back(each);
    }
    q_.waiters.push_back(std::move(waiter));
  }

  const WaitingShop& shop_;
  std::mt19937_64 random_;
  FitQuestion q_;
  std::vector<WeeklyHours> hours_;
  std::vector<OneTarget> targets_;
  Instant from_{1772427600};  // Monday 2026-03-02, midnight in New York; clocks go forward on the 8th
};

}  // namespace

FitQuestion waiting_shop(const WaitingShop& shop) { return Maker(shop).make(); }

}  // namespace wm
