// Ten years from the first day to the last, filled up with uses to the number of records wanted.
#include "world.h"

#include <algorithm>
#include <cstdlib>

#include "decade.h"

namespace wm::bench {

Decade::Decade(const WorldSize& size, std::uint64_t seed) : dice_(seed) {
  world_.size = size;
  world_.targets = world_targets(size.targets);
  world_.shop.zone = *Zone::named("America/Chicago");
  world_.shop.rulebooks = world_rulebooks(world_.targets, world_.shop.zone);
  world_.now = world_.shop.zone.instant({last_day, 18, 0, 0});
  experts_.resize(world_.targets.size());
  users_.resize(world_.targets.size());
}

World Decade::live() {
  make_machines();
  make_people();
  first_publications();
  plan(first_day, Event::nightly);
  while (!planned_.empty()) {
    const Planned next = planned_.top();
    planned_.pop();
    if (next.day <= last_day) happen(next);
  }
  fill_with_uses();
  finish();
  return std::move(world_);
}

void Decade::fill_with_uses() {
  std::vector<std::int64_t> days{0};  // of all stints up to each
  for (const Stint& stint : stints_) {
    days.push_back(days.back() + std::max(0, stint.to.number - stint.from.number));
  }
  const auto wanted = static_cast<std::size_t>(world_.size.records);
  if (world_.shop.records.size() >= wanted || days.back() == 0) std::abort();
  // Everybody keeps up with each machine for most of the time ...
  for (const Stint& stint : stints_) {
    if (!life(stint.person).assessor && dice_.percent(6)) continue;
    const int rhythm = life(stint.person).assessor ? 160 : 300;
    for (Day day = stint.from + dice_.below(60); day < stint.to; day = day + dice_.from(rhythm / 2, rhythm)) {
      use(stint, day);
    }
  }
  if (world_.shop.records.size() > wanted) std::abort();
  // ... and uses some of them far more often.
  while (world_.shop.records.size() < wanted) {
    const std::int64_t at = static_cast<std::int64_t>(dice_.below(days.back()));
    const auto stint =
        static_cast<std::size_t>(std::upper_bound(days.begin(), days.end(), at) - days.begin()) - 1;
    use(stints_[stint], stints_[stint].from + static_cast<int>(at - days[stint]));
  }
}

void Decade::use(const Stint& stint, Day day) {
  add(day, Use{id(stint.person), target_at(stint.target).name});
}

void Decade::finish() {
  for (Record& record : world_.shop.records) {
    const bool may_go =
        std::holds_alternative<Use>(record.fact) || std::holds_alternative<Document>(record.fact);
    if (may_go && dice_.below(1000) == 0) record.voided = record.recorded + dice_.from(600, 200'000);
  }
  std::sort(world_.shop.records.begin(), world_.shop.records.end(),
            [](const Record& a, const Record& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); });
}

Instant Decade::open_time(Day day, int hour) {
  day = open_day(day);
  const bool saturday = (day.number + 3) % 7 == 5;  // 1970-01-01 was a Thursday
  const int opens = saturday ? 9 : 10, hours = saturday ? 9 : 12;
  const int h = hour >= 0
                    ? hour
                    : opens + (dice_.percent(60) ? hours / 2 + dice_.below(hours / 2) : dice_.below(hours));
  return world_.shop.zone.instant({day, h, dice_.below(60), dice_.below(60)});
}

RecordId Decade::add(Day day, Fact fact, int hour) {
  Record record;
  record.id = "r" + padded(static_cast<int>(world_.shop.records.size()), 7);
  record.at = std::min(open_time(day, hour), world_.now);
  record.recorded = record.at + (dice_.percent(90) ? dice_.below(900) : dice_.below(4 * 86400));
  record.fact = std::move(fact);
  world_.shop.records.push_back(std::move(record));
  return world_.shop.records.back().id;
}

void Decade::plan(Day day, Event event, int person, int target, int left, std::string what) {
  planned_.push({open_day(day), order_++, event, person, target, left, std::move(what)});
}

int Decade::some_of(const std::vector<int>& people, int target, Day day, int but) {
  for (int tries = 0; tries < 20 && !people.empty(); ++tries) {
    const int p = dice_.one_of(people);
    const bool there = life(p).leaves > day && life(p).joins < day;
    if (p != but && there && ((p < founders_ && day <= founding_ends) || still_good(p, target, day)))
      return p;
  }
  return -1;
}

bool Decade::still_good(int p, int target, Day day) {
  const Day since = life(p).checked_out[static_cast<std::size_t>(target)];
  const int tier = target_at(target).tier;
  if (since == no_day || day > since + checkout_months(tier) * 30) return false;
  return tier < 3 || still_good(p, target - columns(), day);
}

int Decade::some_expert(int target, Day day, int but) {
  if (day <= founding_ends && dice_.percent(30)) return founder_but(but);
  if (const auto at = trainers_.find(target);
      at != trainers_.end() && at->second.until > day && at->second.person != but && dice_.percent(50)) {
    return at->second.person;
  }
  const int found = some_of(experts_[static_cast<std::size_t>(target)], target, day, but);
  return found < 0 && day <= founding_ends ? founder_but(but) : found;
}

WorldSize WorldSize::part_of(double part) {
  WorldSize size;
  const auto cut = [&](int whole, int least) { return std::max(least, static_cast<int>(whole * part)); };
  size.people = cut(size.people, 20);
  size.machines = cut(size.machines, 4);
  size.assessors = std::min(size.people / 2, cut(size.assessors, 20));
  // A small shop needs as many assessors for its machines as a large one, and they are busy.
  size.records = 200 * size.people + 1500 * std::max(0, size.assessors - static_cast<int>(60 * part));
  return size;
}

World make_world(const WorldSize& size, std::uint64_t seed) { return Decade(size, seed).live(); }

}  // namespace wm::bench
