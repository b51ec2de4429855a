// Who and what there is in the invented shop.
#include "decade.h"

#include <algorithm>

namespace wm::bench {

void Decade::make_machines() {
  for (int i = 0; i < world_.size.machines; ++i) {
    const WorldTarget& target = target_at(i % static_cast<int>(world_.targets.size()));
    world_.shop.machines.push_back({"m" + padded(i, 3), target.machine_class});
  }
}

void Decade::make_people() {
  const int people = world_.size.people, assessors = world_.size.assessors;
  founders_ = std::max(3, assessors / 12);
  for (int i = 0; i < people; ++i) {
    world_.shop.people.push_back("p" + padded(i, 4));
    lives_.push_back(i < assessors ? assessor(i) : member(i));
    plan(lives_.back().joins, Event::join, i);
  }
}

Life Decade::assessor(int i) {
  Life life;
  life.assessor = true;
  life.care = 100;
  const bool founder = i < founders_;
  life.joins = founder ? first_day : first_day + 20 + (i - founders_) * 2900 / world_.size.assessors;
  life.leaves = dice_.percent(75) ? last_day + 1 : life.joins + dice_.from(1500, 2600);
  life.heights.resize(static_cast<std::size_t>(columns()), 0);
  for (int k = 0; k < std::max(1, columns() * 3 / 5); ++k) {
    life.heights[static_cast<std::size_t>((i * 2 + k) % columns())] = i % 3 == 2 && !founder ? 3 : 4;
  }
  life.checked_out.assign(world_.targets.size(), no_day);
  life.begun.assign(world_.targets.size(), false);
  return life;
}

Life Decade::member(int) {
  Life life;
  // The shop grows: later days are likelier.
  const int length = last_day.number - first_day.number;
  life.joins = first_day + 10 + std::max(dice_.below(length - 20), dice_.below(length - 20));
  const int kind = dice_.below(100);
  life.leaves = life.joins + (kind < 10   ? dice_.from(60, 400)
                              : kind < 35 ? dice_.from(400, 1500)
                                          : dice_.from(2000, 4000));
  life.care = dice_.from(85, 99);
  life.heights.resize(static_cast<std::size_t>(columns()), 0);
  const int wanted = std::max(1, columns() * dice_.from(50, 100) / 100);
  for (int k = 0; k < wanted; ++k) {
    const int roll = dice_.below(100);
    life.heights[static_cast<std::size_t>(dice_.below(columns()))] = roll < 20   ? 1
                                                                     : roll < 45 ? 2
                                                                     : roll < 70 ? 3
                                                                                 : 4;
  }
  life.checked_out.assign(world_.targets.size(), no_day);
  life.begun.assign(world_.targets.size(), false);
  return life;
}

void Decade::first_publications() {
  std::vector<std::string> items;
  for (int tier = 1; tier <= 4; ++tier) items.push_back(safety_of(tier));
  for (const WorldTarget& target : world_.targets) {
    items.push_back(quiz_of(target));
    if (target.tier == 1) items.push_back(intro_of(target));
    if (target.tier == 4) sheet_.push_back(target.name);
  }
  std::sort(items.begin(), items.end());
  items.erase(std::unique(items.begin(), items.end()), items.end());
  for (const std::string& item : items) {
    for (Day day = first_day; day < last_day; day = day + dice_.from(700, 1400)) publish_on(day, item);
  }
  for (const std::string& sheet : sheet_) {
    publish_on(first_day, sheet);
    publish_on(day_of({2021, 3, 1}) + dice_.below(300), sheet);
  }
}

void Decade::publish_on(Day day, const std::string& item) { plan(day, Event::publish, -1, -1, 0, item); }

}  // namespace wm::bench
