// Between a proposal and the values of a model's columns.
#include <algorithm>
#include <numeric>
#include <set>
#include <tuple>

#include "core/match/model.h"

namespace wm::match {

bool Model::place(Board& board, const Way& way) const {
  const std::vector<std::size_t>& waiters = ways_.kinds[way.kind].waiters;
  const auto waiter =
      std::find_if(waiters.begin(), waiters.end(), [&](std::size_t each) { return !board.served(each); });
  return waiter != waiters.end() &&
         std::any_of(way.openings.begin(), way.openings.end(), [&](OpeningIndex opening) {
           return board.place({*waiter, opening});
         });
}

void Model::fill(Board& board, const Values& leaning_on) const {
  for (const std::size_t way : by_wish(leaning_on)) place(board, ways_.all[way]);
}

std::vector<Placed> Model::placed(const Values& whole) const {
  std::vector<const Way*> taken;
  for (std::size_t i = 0; i < ways_.all.size(); ++i)
    if (whole[static_cast<std::size_t>(way_columns_[i])] > 0.5) taken.push_back(&ways_.all[i]);
  // In order of time any free unit of a group will do.
  std::sort(taken.begin(), taken.end(), [](const Way* a, const Way* b) { return a->from < b->from; });
  Board board(indexed_);
  for (const Way* way : taken) place(board, *way);
  fill(board, {});
  return board.placed();
}

/// Ways with greater values first; where none has any, those of whoever comes first, on the earliest day.
std::vector<std::size_t> Model::by_wish(const Values& relaxed) const {
  std::vector<std::size_t> order(ways_.all.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto key = [&](std::size_t i) {
    const Way& way = ways_.all[i];
    const double value = relaxed.empty() ? 0 : relaxed[static_cast<std::size_t>(way_columns_[i])];
    return std::tuple(value > 0.01 ? -value : 0.0, way.kind, way.day, way.assessor, way.from);
  };
  std::vector<decltype(key(0))> keys;
  for (const std::size_t i : order) keys.push_back(key(i));
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return keys[a] < keys[b]; });
  return order;
}

std::vector<Placed> Model::rounded(const Values& relaxed) const {
  Board board(indexed_);
  fill(board, relaxed);
  return board.placed();
}

Values Model::values(const std::vector<Placed>& placed) const {
  Values out(static_cast<std::size_t>(program.columns()), 0);
  const auto set = [&](int column) { out[static_cast<std::size_t>(column)] = 1; };
  Board board(indexed_);
  for (const Placed& each : placed) {
    board.place(each);
    const auto& [kind, place] = kind_of_.at(each.waiter);
    set(served_[kind][place]);
    for (const std::size_t i : ways_of_kind_[kind]) {
      const std::vector<OpeningIndex>& openings = ways_.all[i].openings;
      if (std::find(openings.begin(), openings.end(), each.opening) != openings.end()) set(way_columns_[i]);
    }
  }
  for (const Rest& rest : rests_) {
    const auto& busy = board.of(rest.person);
    const std::int64_t over =
        rest.from + std::int64_t{60} * indexed_.limits[static_cast<std::size_t>(rest.person)]->stretch->rest;
    const bool ends =
        std::any_of(busy.begin(), busy.end(), [&](const Engagement& e) { return e.to == rest.from; });
    const bool clear = std::none_of(busy.begin(), busy.end(),
                                    [&](const Engagement& e) { return e.from < over && rest.from < e.to; });
    if (ends && clear) set(rest.column);
  }
  for (const OneDay& day : days_) {
    std::int64_t first = day.points.back(), last = day.points.front();
    for (const Engagement& each : board.of(day.person)) {
      if (indexed_.question.zone.day({each.from}).number != day.day) continue;
      first = std::min(first, each.from);
      last = std::max(last, each.to);
    }
    if (first < last) set(day.comes);
    for (std::size_t cell = 0; cell < day.there.size(); ++cell) {
      if (day.points[cell] < first || day.points[cell] >= last) continue;
      set(day.there[cell]);
      if (day.points[cell] == first) set(day.arrives[cell]);
    }
  }
  return out;
}

}  // namespace wm::match
