#include "small_question.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

namespace wm::small_match {
namespace {

const char* const assessors[] = {"ana", "bo", "cem"};
const char* const units[] = {"lathe 1", "lathe 2", "saw"};

class Maker {
 public:
  explicit Maker(std::mt19937_64& random) : random_(random) {}

  FitQuestion make() {
    if (chance(4)) q_.zone = Zone::named("America/New_York").value();
    step_ = pick({15, 30, 30, 60});
    make_booked();
    make_openings();
    make_waiters();
    make_limits();
    q_.longest_wait = pick({10, 20, 36500});
    q_.next_week = start_ + 86400;
    return q_;
  }

 private:
  int below(int n) { return static_cast<int>(random_() % static_cast<std::uint64_t>(n)); }
  bool chance(int one_in) { return below(one_in) == 0; }
  int pick(std::vector<int> from) {
    return from[static_cast<std::size_t>(below(static_cast<int>(from.size())))];
  }

  Instant at(int steps) const { return start_ + std::int64_t{60} * step_ * steps; }

  void make_booked() {
    for (int i = pick({0, 0, 1, 2, 3}); i > 0; --i) {
      const Instant from = at(below(16));
      q_.booked.push_back({chance(3) ? "wim" : "zoe",
                           assessors[below(3)],
                           units[below(3)],
                           {from, from + 60 * pick({30, 60, 45})},
                           {}});
      // Now and then with two of them; whoever is on both sides is no less in one place.
      const std::string other = assessors[below(3)];
      if (chance(3) && other != q_.booked.back().assessor) q_.booked.back().second = other;
    }
  }

  bool taken(const std::string& who, const Interval& when) const {
    return std::any_of(q_.booked.begin(), q_.booked.end(), [&](const Booked& each) {
      return overlap(each.when, when) && (each.person == who || each.assessor == who ||
                                          (!who.empty() && each.second == who) || each.machine == who);
    });
  }

  /// Some hours of some assessors on some unit, and now and then single times.
  void make_openings() {
    for (int i = 1 + below(4); i > 0 && q_.openings.size() < 14; --i) {
      const std::string assessor = assessors[below(3)], unit = units[below(3)];
      const bool twin = chance(3);
      const std::string other = assessors[below(3)];
      const std::string second = chance(2) && other != assessor ? other : "";
      const int first = below(10), minutes = pick({30, 60, 60, 45, 90});
      for (int s = first; s < first + 1 + below(5); ++s) {
        const Opening opening{{at(s), at(s) + 60 * minutes}, assessor, unit, second};
        if (taken(assessor, opening.when) || taken(second, opening.when) || taken(unit, opening.when))
          continue;
        add(opening);
        if (twin && !taken("twin", opening.when)) add({opening.when, assessor, "twin", second});
      }
    }
  }

  void add(const Opening& opening) {
    if (std::find(q_.openings.begin(), q_.openings.end(), opening) == q_.openings.end())
      q_.openings.push_back(opening);
  }

  void make_waiters() {
    const char* const names[] = {"wim", "xia", "yve", "zoe", "ana", "wim"};
    std::vector<OpeningIndex> last;
    for (int i = 1 + below(5); i > 0; --i) {
      Waiter waiter{names[below(6)], "lathe", below(30), {}, {}};
      if (chance(4)) waiter.lapses = start_ + 3600 * below(60);
      for (OpeningIndex each = 0; each < q_.openings.size(); ++each)
        if (!chance(3)) waiter.fits.push_back(each);
      if (chance(2)) waiter.fits = last;  // two alike
      last = waiter.fits;
      std::erase_if(waiter.fits,
                    [&](OpeningIndex each) { return taken(waiter.person, q_.openings[each].when); });
      q_.waiters.push_back(std::move(waiter));
    }
  }

  void make_limits() {
    for (const char* assessor : assessors) {
      AssessorLimits limits{assessor, {}, {}};
      if (chance(4)) limits.longest_day = pick({60, 90, 120});
      if (chance(4)) limits.stretch = Stretch{pick({60, 90, 120}), pick({15, 30, 45})};
      if (limits.longest_day || limits.stretch) q_.limits.push_back(limits);
    }
  }

  std::mt19937_64& random_;
  FitQuestion q_;
  int step_ = 30;
  // An evening in UTC, so that some days end amid the openings.
  Instant start_{1772305200 - 7200 + 3600 * 4};
};

struct Engaged {
  Interval when;
  bool gives, fresh;
};

/// Everything somebody takes part in.
std::vector<Engaged> engaged(const FitQuestion& q, const std::vector<Placed>& placed, const PersonId& who) {
  std::vector<Engaged> out;
  for (const Booked& each : q.booked) {
    if (each.person == who) out.push_back({each.when, false, false});
    if (each.assessor == who || each.second == who) out.push_back({each.when, true, false});
  }
  for (const Placed& each : placed) {
    const Opening& opening = q.openings[each.opening];
    if (q.waiters[each.waiter].person == who) out.push_back({opening.when, false, true});
    if (opening.assessor == who || opening.second == who) out.push_back({opening.when, true, true});
  }
  return out;
}

bool day_holds(const FitQuestion& q, const std::vector<Engaged>& all, int longest) {
  std::map<Day, std::pair<std::int64_t, bool>> days;
  for (const Engaged& each : all) {
    if (!each.gives) continue;
    auto& [seconds, fresh] = days[q.zone.day(each.when.from)];
    seconds += each.when.to.seconds - each.when.from.seconds;
    fresh = fresh || each.fresh;
  }
  return std::none_of(days.begin(), days.end(),
                      [&](const auto& day) { return day.second.second && day.second.first > 60 * longest; });
}

/// Minute by minute: a stretch goes on until nothing is on for as long as a rest.
bool stretch_holds(const std::vector<Engaged>& all, const Stretch& stretch) {
  if (all.empty()) return true;
  std::int64_t first = all.front().when.from.seconds, last = 0;
  for (const Engaged& each : all) {
    first = std::min(first, each.when.from.seconds);
    last = std::max(last, each.when.to.seconds);
  }
  std::int64_t began = first, ended = first, idle = 0;
  bool fresh = false, in_stretch = false;
  const auto bad = [&] { return in_stretch && fresh && ended - began > 60 * stretch.minutes; };
  for (std::int64_t t = first; t < last; t += 60) {
    bool on = false;
    for (const Engaged& each : all) {
      if (t < each.when.from.seconds || t >= each.when.to.seconds) continue;
      if (!in_stretch) {
        in_stretch = true;
        began = t;
        fresh = false;
      }
      on = true;
      fresh = fresh || each.fresh;
    }
    idle = on ? 0 : idle + 60;
    if (on) ended = t + 60;
    if (idle < 60 * stretch.rest) continue;
    if (bad()) return false;
    in_stretch = false;
  }
  return !bad();
}

std::vector<PersonId> those(const Opening& opening) {
  std::vector<PersonId> out{opening.assessor};
  if (!opening.second.empty()) out.push_back(opening.second);
  return out;
}

bool share(const std::vector<PersonId>& some, const std::vector<PersonId>& others) {
  return std::any_of(some.begin(), some.end(), [&](const PersonId& each) {
    return std::find(others.begin(), others.end(), each) != others.end();
  });
}

void try_all(const FitQuestion& q, std::size_t waiter, std::vector<Placed>& placed, Measures& best,
             bool& any) {
  if (waiter == q.waiters.size()) {
    if (!allowed(q, placed)) return;
    const Measures measures = counted(q, placed);
    const auto key = [](const Measures& m) {
      return std::tuple(m.first, m.served, m.waited, -m.trips, -m.gaps);
    };
    if (!any || key(best) < key(measures)) best = measures;
    any = true;
    return;
  }
  try_all(q, waiter + 1, placed, best, any);
  for (const OpeningIndex opening : q.waiters[waiter].fits) {
    placed.push_back({waiter, opening});
    // What clashes now will clash whatever comes.
    const Opening& added = q.openings[opening];
    const bool clash = std::any_of(placed.begin(), placed.end() - 1, [&](const Placed& each) {
      const Opening& other = q.openings[each.opening];
      return overlap(other.when, added.when) &&
             (share(those(other), those(added)) || other.unit == added.unit);
    });
    if (!clash) try_all(q, waiter + 1, placed, best, any);
    placed.pop_back();
  }
}

}  // namespace

FitQuestion question(std::mt19937_64& random) { return Maker(random).make(); }

FitQuestion long_evening(std::mt19937_64& random) {
  const auto below = [&](int n) { return static_cast<int>(random() % static_cast<std::uint64_t>(n)); };
  FitQuestion q;
  const Instant start{1772298000 + 3600 * below(7)};  // 2026-02-28, 17:00 to 23:00
  const int step = below(4) == 0 ? 60 : 15;
  for (const char* assessor : {"ana", "bo"})
    for (int i = below(3); i > 0; --i) {
      const Instant from = start + 900 * below(20);
      q.booked.push_back({"zoe", assessor, "far", {from, from + 900 * (1 + below(4))}});
    }
  const int lengths[] = {30, 45, 50, 60, 75};
  std::vector<OpeningIndex> of_length[2];
  for (std::vector<OpeningIndex>& openings : of_length) {
    const int minutes = lengths[below(5)];
    for (const char* assessor : {"ana", "bo"}) {
      const int first = below(6), last = first + 4 + below(12);
      const PersonId other = assessor == std::string("ana") ? "bo" : "ana";
      const PersonId second = below(4) == 0 ? other : "";
      for (int s = first; s < last; ++s) {
        const Instant from = start + 60 * step * s;
        const Opening opening{{from, from + 60 * minutes}, assessor, below(8) == 0 ? "two" : "one", second};
        const bool taken = std::any_of(q.booked.begin(), q.booked.end(), [&](const Booked& each) {
          return opening.assesses(each.assessor) && overlap(each.when, opening.when);
        });
        if (taken) continue;
        openings.push_back(static_cast<OpeningIndex>(q.openings.size()));
        q.openings.push_back(opening);
      }
    }
  }
  for (int i = 0; i < 6; ++i)
    q.waiters.push_back(
        {"member " + std::to_string(i), "lathe", below(9), std::nullopt, of_length[below(2)]});
  return q;
}

bool allowed(const FitQuestion& q, const std::vector<Placed>& placed) {
  std::set<std::size_t> served;
  std::set<PersonId> people;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const Waiter& waiter = q.waiters[placed[i].waiter];
    const Opening& a = q.openings[placed[i].opening];
    std::vector<PersonId> all = those(a);
    if (!served.insert(placed[i].waiter).second || share(all, {waiter.person})) return false;
    all.push_back(waiter.person);
    if (std::find(waiter.fits.begin(), waiter.fits.end(), placed[i].opening) == waiter.fits.end())
      return false;
    people.insert(all.begin(), all.end());
    for (std::size_t j = 0; j < i; ++j) {
      const Opening& b = q.openings[placed[j].opening];
      std::vector<PersonId> others = those(b);
      others.push_back(q.waiters[placed[j].waiter].person);
      if (overlap(a.when, b.when) && (a.unit == b.unit || share(all, others))) return false;
    }
    for (const Booked& b : q.booked) {
      if (!overlap(a.when, b.when)) continue;
      if (share(all, {b.person, b.assessor, b.second})) return false;
      if (a.unit == b.machine) return false;
    }
  }
  return std::all_of(q.limits.begin(), q.limits.end(), [&](const AssessorLimits& limits) {
    const auto all = engaged(q, placed, limits.assessor);
    if (limits.longest_day && !day_holds(q, all, *limits.longest_day)) return false;
    return !limits.stretch || stretch_holds(all, *limits.stretch);
  });
}

Measures counted(const FitQuestion& q, const std::vector<Placed>& placed) {
  Measures out;
  for (const Placed& each : placed) {
    const Waiter& waiter = q.waiters[each.waiter];
    out.first += waiter.days > q.longest_wait || (waiter.lapses && *waiter.lapses <= q.next_week);
    out.served += 1;
    out.waited += waiter.days;
  }
  std::set<PersonId> givers;
  for (const Opening& each : q.openings)
    for (const PersonId& who : those(each)) givers.insert(who);
  for (const PersonId& who : givers) {
    std::map<Day, std::vector<Engaged>> days;
    for (const Engaged& each : engaged(q, placed, who)) days[q.zone.day(each.when.from)].push_back(each);
    for (const auto& [day, all] : days) {
      out.trips += std::all_of(all.begin(), all.end(), [](const Engaged& each) { return each.fresh; });
      std::int64_t first = all.front().when.from.seconds, last = 0, idle = 0;
      for (const Engaged& each : all) {
        first = std::min(first, each.when.from.seconds);
        last = std::max(last, each.when.to.seconds);
      }
      for (std::int64_t t = first; t < last; t += 60)
        idle += std::none_of(all.begin(), all.end(), [&](const Engaged& each) {
          return each.when.from.seconds <= t && t < each.when.to.seconds;
        });
      out.gaps += idle;
    }
  }
  return out;
}

Measures best(const FitQuestion& q) {
  Measures best;
  std::vector<Placed> placed;
  bool any = false;
  try_all(q, 0, placed, best, any);
  return best;
}

}  // namespace wm::small_match
