#include "core/match/ways.h"

#include <algorithm>
#include <compare>
#include <map>
#include <set>
#include <tuple>

namespace wm::match {
namespace {

/// Whoever waits twice, assesses, or has limits is nobody's like: their other engagements count.
std::vector<Kind> kinds(const Indexed& indexed) {
  std::map<int, int> waits;
  for (const int person : indexed.person) ++waits[person];
  std::map<std::vector<OpeningIndex>, std::size_t> alike;
  std::vector<Kind> out;
  for (const std::size_t waiter : indexed.order) {
    const std::vector<OpeningIndex>& fits = indexed.question.waiters[waiter].fits;
    if (fits.empty()) continue;
    const int person = indexed.person[waiter];
    const bool of_its_own = waits[person] > 1 || indexed.assesses[person] || indexed.limits[person];
    std::vector<OpeningIndex> sorted = fits;
    std::sort(sorted.begin(), sorted.end());
    const auto [place, fresh] = of_its_own ? std::pair(alike.end(), true) : alike.emplace(sorted, out.size());
    if (fresh)
      out.push_back({{waiter}, of_its_own ? person : -1});
    else
      out[place->second].waiters.push_back(waiter);
  }
  return out;
}

/// Something that can be done on a unit.
struct Doing {
  std::int64_t from = 0, to = 0;
  int assessor = 0, second = -1;
  std::size_t kind = 0;
  friend auto operator<=>(const Doing&, const Doing&) = default;
};
/// What decides whether two units of a block are alike: everything that can be done on them.
using OnUnit = std::vector<Doing>;

struct OneBlock {
  const Indexed& indexed;
  Ways& into;
  std::map<int, std::vector<std::pair<std::size_t, OpeningIndex>>> by_unit;  // kind and opening

  OnUnit key(const std::vector<std::pair<std::size_t, OpeningIndex>>& openings) const {
    OnUnit out;
    for (const auto& [kind, opening] : openings) {
      const Spot& spot = indexed.spots[opening];
      out.push_back({spot.from, spot.to, spot.assessor, spot.second, kind});
    }
    std::sort(out.begin(), out.end());
    return out;
  }

  void add() {
    std::map<OnUnit, std::vector<int>> groups;
    for (const auto& [unit, openings] : by_unit) groups[key(openings)].push_back(unit);
    const std::set<std::int64_t> keep = starts(groups);
    for (const auto& [key, units] : groups) add_group(units, keep);
  }

  /// All starts, where a day or a stretch ends inside, so that moving would change more than times.
  std::set<std::int64_t> starts(const std::map<OnUnit, std::vector<int>>& groups) const {
    std::vector<Start> all;
    std::set<std::int64_t> every;
    std::set<int> days;
    bool free_to_move = true;
    std::map<std::tuple<int, int, std::size_t, const OnUnit*, std::int64_t>, std::size_t> runs;
    for (const auto& [key, units] : groups)
      for (const auto& [from, to, assessor, second, kind] : key) {
        const std::tuple same(assessor, second, kind, &key, to - from);
        const auto run = runs.emplace(same, runs.size()).first->second;
        all.push_back({from, to - from, run});
        every.insert(from);
        days.insert(indexed.question.zone.day({from}).number);
        const int person = into.kinds[kind].person;
        for (const int who : {assessor, second, person})
          if (who >= 0 && indexed.limits[who] && indexed.limits[who]->stretch) free_to_move = false;
      }
    if (!free_to_move || days.size() > 1) return every;
    const auto needed = starts_needed(all);
    return {needed.begin(), needed.end()};
  }

  void add_group(const std::vector<int>& units, const std::set<std::int64_t>& keep) {
    std::map<Doing, std::size_t> made;
    for (const int unit : units)
      for (const auto& [kind, opening] : by_unit[unit]) {
        const Spot& spot = indexed.spots[opening];
        if (!keep.contains(spot.from)) continue;
        const auto [place, fresh] =
            made.emplace(Doing{spot.from, spot.to, spot.assessor, spot.second, kind}, into.all.size());
        if (fresh)
          into.all.push_back(
              {kind, spot.from, spot.to, spot.assessor, spot.second, spot.day, into.group_sizes.size(), {}});
        into.all[place->second].openings.push_back(opening);
      }
    into.group_sizes.push_back(units.size());
  }
};

}  // namespace

Ways ways(const Indexed& indexed) {
  Ways out;
  out.kinds = kinds(indexed);
  const std::vector<Interval> all = blocks(indexed.spots);
  std::vector<OneBlock> each(all.size(), OneBlock{indexed, out, {}});
  for (std::size_t kind = 0; kind < out.kinds.size(); ++kind)
    for (const OpeningIndex opening : indexed.question.waiters[out.kinds[kind].waiters.front()].fits) {
      const Spot& spot = indexed.spots[opening];
      if (out.kinds[kind].person >= 0 && spot.assesses(out.kinds[kind].person)) continue;
      const auto after =
          std::upper_bound(all.begin(), all.end(), spot.from,
                           [](std::int64_t t, const Interval& b) { return t < b.from.seconds; });
      each[static_cast<std::size_t>(after - all.begin()) - 1].by_unit[spot.unit].emplace_back(kind, opening);
    }
  for (OneBlock& block : each)
    if (!block.by_unit.empty()) block.add();
  return out;
}

}  // namespace wm::match
