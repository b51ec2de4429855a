#include <algorithm>
#include <map>
#include <set>

#include "core/match/model.h"

namespace wm::match {
namespace {

using Trip = std::pair<int, int>;  // assessor, day

std::map<Trip, std::vector<Placed>> by_trip(const Indexed& indexed, const std::vector<Placed>& placed) {
  std::map<Trip, std::vector<Placed>> out;
  for (const Placed& each : placed) {
    const Spot& spot = indexed.spots[each.opening];
    out[{spot.assessor, spot.day}].push_back(each);
  }
  return out;
}

}  // namespace

std::vector<Placed> Model::fewer_trips(std::vector<Placed> placed) const {
  std::set<Trip> booked;
  for (std::size_t person = 0; person < indexed_.booked.size(); ++person)
    for (const Engagement& each : indexed_.booked[person])
      booked.emplace(static_cast<int>(person), indexed_.question.zone.day({each.from}).number);

  const auto without = [&](const Trip& trip, const auto& trips) {
    Board board(indexed_);
    for (const Placed& each : placed) {
      const Spot& spot = indexed_.spots[each.opening];
      if (Trip{spot.assessor, spot.day} != trip) board.place(each);
    }
    for (const Placed& each : trips.at(trip))
      for (const std::size_t i : ways_of_kind_[kind_of_.at(each.waiter).first]) {
        const Way& way = ways_.all[i];
        const Trip other{way.assessor, way.day};
        if (other == trip || (!trips.contains(other) && !booked.contains(other))) continue;
        const bool done = std::any_of(way.openings.begin(), way.openings.end(), [&](OpeningIndex o) {
          return board.place({each.waiter, o});
        });
        if (done) break;
      }
    return board.placed();
  };

  for (bool fewer = true; fewer;) {
    fewer = false;
    const auto trips = by_trip(indexed_, placed);
    for (const auto& [trip, those] : trips) {
      if (booked.contains(trip)) continue;
      std::vector<Placed> moved = without(trip, trips);
      if (moved.size() < placed.size()) continue;
      placed = std::move(moved);
      fewer = true;
      break;
    }
  }
  return placed;
}

}  // namespace wm::match
