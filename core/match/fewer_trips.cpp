#include <algorithm>
#include <map>
#include <set>

#include "core/match/model.h"

namespace wm::match {
namespace {

using Trip = std::pair<int, int>;  // assessor, day

/// Of its assessor, and of the second.
std::vector<Trip> trips_of(const Spot& spot) {
  std::vector<Trip> out{{spot.assessor, spot.day}};
  if (spot.second >= 0) out.emplace_back(spot.second, spot.day);
  return out;
}

std::map<Trip, std::vector<Placed>> by_trip(const Indexed& indexed, const std::vector<Placed>& placed) {
  std::map<Trip, std::vector<Placed>> out;
  for (const Placed& each : placed)
    for (const Trip& trip : trips_of(indexed.spots[each.opening])) out[trip].push_back(each);
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
    for (const Placed& each : placed)
      if (!indexed_.spots[each.opening].assesses(trip.first) ||
          indexed_.spots[each.opening].day != trip.second)
        board.place(each);
    for (const Placed& each : trips.at(trip))
      for (const std::size_t i : ways_of_kind_[kind_of_.at(each.waiter).first]) {
        const Way& way = ways_.all[i];
        const std::vector<Trip> others = trips_of(indexed_.spots[way.openings.front()]);
        const bool anyway = std::all_of(others.begin(), others.end(), [&](const Trip& other) {
          return other != trip && (trips.contains(other) || booked.contains(other));
        });
        if (!anyway) continue;
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
