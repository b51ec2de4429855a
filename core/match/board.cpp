#include "core/match/board.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <string>
#include <tuple>

namespace wm::match {
namespace {

/// Numbers in the order in which names are first met.
class Numbers {
 public:
  int operator()(const std::string& name) {
    return numbers_.emplace(name, static_cast<int>(numbers_.size())).first->second;
  }
  std::size_t size() const { return numbers_.size(); }

 private:
  std::map<std::string, int> numbers_;
};

bool by_time(const Engagement& a, const Engagement& b) {
  return std::tie(a.from, a.to) < std::tie(b.from, b.to);
}

void insert(std::vector<Engagement>& into, const Engagement& one) {
  into.insert(std::upper_bound(into.begin(), into.end(), one, by_time), one);
}

/// Fresh ones keep clear of all; what is booked may overlap, as the past has it.
bool clear(const std::vector<Engagement>& all, const Spot& spot) {
  return std::none_of(all.begin(), all.end(),
                      [&](const Engagement& each) { return each.from < spot.to && spot.from < each.to; });
}

}  // namespace

Indexed::Indexed(const FitQuestion& asked) : question(asked) {
  Numbers people, machines;
  for (const Opening& each : asked.openings)
    spots.push_back({each.when.from.seconds, each.when.to.seconds, people(each.assessor), machines(each.unit),
                     each.second.empty() ? -1 : people(each.second), asked.zone.day(each.when.from).number});
  assesses.assign(people.size(), 1);
  for (const Waiter& each : asked.waiters) {
    person.push_back(people(each.person));
    first.push_back(comes_first(asked, each));
  }
  assesses.resize(people.size());
  for (const Booked& each : asked.booked) {
    const auto add = [&](const PersonId& who, bool gives) {
      const auto person_at = static_cast<std::size_t>(people(who));
      booked.resize(people.size());
      insert(booked[person_at], {each.when.from.seconds, each.when.to.seconds, gives, false});
    };
    add(each.person, false);
    add(each.assessor, true);
    if (!each.second.empty()) add(each.second, true);
  }
  for (const AssessorLimits& each : asked.limits) {
    const int who = people(each.assessor);
    limits.resize(people.size());
    limits[who] = &each;
  }
  assesses.resize(people.size());
  booked.resize(people.size());
  limits.resize(people.size());
  units = machines.size();
  order.resize(asked.waiters.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::tuple(!first[a], -asked.waiters[a].days) < std::tuple(!first[b], -asked.waiters[b].days);
  });
}

Board::Board(const Indexed& indexed)
    : indexed_(indexed), served_(indexed.person.size()), people_(indexed.booked), units_(indexed.units) {}

bool Board::place(Placed placed) {
  const Spot& spot = indexed_.spots[placed.opening];
  const int member = indexed_.person[placed.waiter];
  if (served_[placed.waiter] || spot.assesses(member)) return false;
  if (!clear(people_[member], spot) || !clear(units_[spot.unit], spot)) return false;
  const Engagement gives{spot.from, spot.to, true, true}, takes{spot.from, spot.to, false, true};
  if (!can_give(spot.assessor, spot) || (spot.second >= 0 && !can_give(spot.second, spot)) ||
      !stretch_holds(member, takes))
    return false;
  insert(people_[spot.assessor], gives);
  if (spot.second >= 0) insert(people_[spot.second], gives);
  insert(people_[member], takes);
  insert(units_[spot.unit], gives);
  served_[placed.waiter] = 1;
  placed_.push_back(placed);
  return true;
}

bool Board::can_give(int person, const Spot& spot) const {
  return clear(people_[person], spot) && day_holds(person, spot) &&
         stretch_holds(person, {spot.from, spot.to, true, true});
}

bool Board::day_holds(int person, const Spot& spot) const {
  const AssessorLimits* limits = indexed_.limits[person];
  if (!limits || !limits->longest_day) return true;
  std::int64_t seconds = spot.to - spot.from;
  for (const Engagement& each : people_[person])
    if (each.gives && indexed_.question.zone.day({each.from}).number == spot.day)
      seconds += each.to - each.from;
  return seconds <= std::int64_t{60} * *limits->longest_day;
}

bool Board::stretch_holds(int person, const Engagement& added) const {
  const AssessorLimits* limits = indexed_.limits[person];
  if (!limits || !limits->stretch) return true;
  const std::int64_t rest = std::int64_t{60} * limits->stretch->rest;
  std::int64_t from = added.from, to = added.to;
  // Whatever lies within a rest of the stretch belongs to it, and may bring in more.
  for (bool grew = true; grew;) {
    grew = false;
    for (const Engagement& each : people_[person]) {
      const bool touches = each.from < to + rest && from < each.to + rest;
      if (!touches || (from <= each.from && each.to <= to)) continue;
      from = std::min(from, each.from);
      to = std::max(to, each.to);
      grew = true;
    }
  }
  return to - from <= std::int64_t{60} * limits->stretch->minutes;
}

std::vector<Placed> Board::placed() const {
  std::vector<Placed> out = placed_;
  std::sort(out.begin(), out.end(), [&](const Placed& a, const Placed& b) {
    const Spot &x = indexed_.spots[a.opening], &y = indexed_.spots[b.opening];
    return std::tie(x.from, x.assessor, a.waiter) < std::tie(y.from, y.assessor, b.waiter);
  });
  return out;
}

}  // namespace wm::match
