// What happens in the invented shop: papers, lessons, quizzes, sessions, check-outs, appointments.
#include "decade.h"

#include <algorithm>

namespace wm::bench {

void Decade::happen(const Planned& now) {
  if (now.person >= 0 && now.day >= life(now.person).leaves) return;
  switch (now.event) {
    case Event::join:
      return join(now);
    case Event::paper:
      return paper(now);
    case Event::lesson:
      if (!up_to_date(now, 60)) lesson(now.person, now.day, now.what);
      return;
    case Event::quiz:
      if (!up_to_date(now, 36)) take_quiz(now.person, now.day, now.what);
      return;
    case Event::learn:
      return learn(now);
    case Event::session:
      return session(now);
    case Event::practise:
      return practise(now);
    case Event::checkout:
      return checkout(now);
    case Event::appoint:
      return appoint(now);
    case Event::publish:
      return publish(now);
    case Event::nightly:
      return nightly(now.day);
  }
}

void Decade::join(const Planned& now) {
  const int p = now.person;
  const int years = !life(p).assessor && dice_.percent(4) ? dice_.from(13, 17) : dice_.from(18, 65);
  add(now.day, Birth{id(p), now.day + (-years * 365 - dice_.below(365))});
  for (const char* document : {"membership", "induction"}) {
    plan(now.day, Event::paper, p, -1, 0, document);
  }
  if (dice_.percent(8)) plan(now.day + dice_.below(200), Event::paper, p, -1, 0, "course");
  if (dice_.percent(25) || life(p).assessor) {
    plan(now.day + dice_.below(300), Event::paper, p, -1, 0, "certificate");
  }
  if (life(p).assessor || top(life(p)) == 4)
    plan(now.day + dice_.below(90), Event::paper, p, -1, 0, "refresher");
  const int pace = life(p).assessor ? 150 : 600;
  for (int column = 0; column < columns(); ++column) {
    if (life(p).heights[static_cast<std::size_t>(column)] > 0) {
      plan(now.day + 2 + dice_.below(pace), Event::learn, p, column);
    }
  }
  if (p < founders_) found(p, now.day);
  if (life(p).assessor) plan(now.day + dice_.from(240, 420), Event::appoint, p);
}

void Decade::found(int p, Day day) {
  life(p).appointed = true;
  add(day, Appoint{id(p), Everything{}, true, founding_ends}, before_opening);
}

void Decade::paper(const Planned& now) {
  const bool dated = now.what == "membership" && dice_.percent(30);
  add(now.day, Document{id(now.person), now.what, dated ? std::optional(now.day + 365) : std::nullopt});
  if (now.what == "course" || now.what == "certificate") return;
  const int year = now.what == "refresher" ? 730 : 360;
  if (const auto late = lateness(now.person))
    plan(now.day + year + *late, Event::paper, now.person, -1, 0, now.what);
}

std::optional<int> Decade::lateness(int person) {
  const int care = life(person).care;
  const int roll = dice_.below(100);
  if (roll < care) return dice_.from(-30, care >= 100 ? -6 : 2);
  if (roll < care + (100 - care) * 3 / 4) return dice_.from(5, 120);
  return dice_.percent(70) ? std::optional(dice_.from(120, 500)) : std::nullopt;
}

bool Decade::up_to_date(const Planned& now, int months) {
  const auto found = life(now.person).done.find(now.what);
  return found != life(now.person).done.end() && found->second.revision == revision(now.what) &&
         now.day < found->second.day + months * 20;
}

void Decade::lesson(int person, Day day, const std::string& what) {
  add(day, Lesson{id(person), what, revision(what)});
  life(person).done[what] = {day, revision(what)};
  if (what.starts_with("safety")) again(Event::lesson, person, day, 60, what);
}

bool Decade::take_quiz(int person, Day day, const std::string& what) {
  const int total = dice_.from(10, 20);
  const bool good = dice_.percent(life(person).assessor ? 97 : 80);
  const int correct =
      good ? dice_.from((total * 85 + 99) / 100, total) : dice_.from(total / 3, total * 9 / 10);
  const int critical = good || correct == total ? 0 : dice_.below(2);
  add(day, Quiz{id(person), what, revision(what), correct, total, critical});
  const bool passed = critical == 0 && 100 * correct >= 80 * total;
  if (passed) {
    life(person).done[what] = {day, revision(what)};
    again(Event::quiz, person, day, 36, what);
    return true;
  }
  life(person).failed[what].push_back(day);
  if (life(person).done.count(what) != 0) {
    plan(day + days_to_retry(person, day, what), Event::quiz, person, -1, 0, what);
  }
  return false;
}

int Decade::days_to_retry(int person, Day day, const std::string& what) {
  if (!life(person).assessor && dice_.percent(4)) return 1;
  const auto& failed = life(person).failed[what];
  const bool often = failed.size() >= 3 && failed[failed.size() - 3] > day + (-31);
  return often ? 32 : dice_.from(2, 9);
}

void Decade::again(Event event, int person, Day day, int months, const std::string& what, int target) {
  if (const auto late = lateness(person)) {
    plan(end(day, {PeriodUnit::months, months}) + *late, event, person, target, 0, what);
  }
}

void Decade::learn(const Planned& now) {
  const WorldTarget& target = target_at(now.target);
  Life& one = life(now.person);
  if (one.done.count(safety_of(target.tier)) == 0) lesson(now.person, now.day, safety_of(target.tier));
  if (target.tier == 1 && one.done.count(intro_of(target)) == 0)
    lesson(now.person, now.day, intro_of(target));
  if (one.done.count(quiz_of(target)) == 0 && !take_quiz(now.person, now.day, quiz_of(target))) {
    return plan(now.day + days_to_retry(now.person, now.day, quiz_of(target)), Event::learn, now.person,
                now.target);
  }
  if (one.heights[static_cast<std::size_t>(target.column)] < target.tier) {
    return plan(now.day + dice_.from(3, 30), Event::practise, now.person, now.target, dice_.from(2, 7));
  }
  const int sessions = target.tier <= 2 ? 1 : dice_.from(2, 3);
  plan(now.day + dice_.from(1, 14), Event::session, now.person, now.target, sessions);
}

void Decade::session(const Planned& now) {
  if (!supervise(now))
    return plan(now.day + dice_.from(5, 20), Event::session, now.person, now.target, now.left);
  if (now.left > 1) {
    plan(now.day + dice_.from(2, 15), Event::session, now.person, now.target, now.left - 1);
  } else {
    plan(now.day + dice_.from(1, 15), Event::checkout, now.person, now.target, 1);
  }
}

void Decade::practise(const Planned& now) {
  supervise(now);
  if (now.left > 1) plan(now.day + dice_.from(20, 70), Event::practise, now.person, now.target, now.left - 1);
}

bool Decade::supervise(const Planned& now) {
  const int tier = target_at(now.target).tier;
  const bool by_assessor = tier >= 3 || now.left <= 1 || life(now.person).assessor || dice_.percent(50);
  int supervisor = by_assessor ? -1 : some_user(now.target, now.day, now.person);
  if (supervisor < 0) supervisor = some_expert(now.target, now.day, now.person);
  if (supervisor < 0) return false;
  add(now.day,
      Supervised{id(now.person), target_at(now.target).name, dice_.from(3, 12) * 10, id(supervisor)});
  return true;
}

void Decade::checkout(const Planned& now) {
  const WorldTarget& target = target_at(now.target);
  Life& one = life(now.person);
  const Day last = one.checked_out[static_cast<std::size_t>(now.target)];
  if (last != no_day && now.left == 0 && now.day < last + checkout_months(target.tier) * 20) return;
  const bool slip = !one.assessor && dice_.below(250) == 0;
  const int by =
      slip ? some_user(now.target, now.day, now.person) : some_expert(now.target, now.day, now.person);
  if (by < 0) return plan(now.day + dice_.from(5, 25), Event::checkout, now.person, now.target, now.left);
  const bool first = !one.begun[static_cast<std::size_t>(now.target)];
  const int roll = one.assessor ? 0 : dice_.below(100);
  const Outcome outcome = roll < (first ? 84 : 94) ? Outcome::passed
                          : roll < 96              ? Outcome::failed
                                                   : Outcome::stopped;
  add(now.day, Checkout{id(now.person), target.name, revision(target.name), outcome, id(by)});
  if (outcome != Outcome::passed) {
    if (outcome == Outcome::failed) one.checked_out[static_cast<std::size_t>(now.target)] = no_day;
    return plan(now.day + dice_.from(5, 25), Event::session, now.person, now.target, 1);
  }
  if (!slip) one.checked_out[static_cast<std::size_t>(now.target)] = now.day;
  one.begun[static_cast<std::size_t>(now.target)] = true;
  again(Event::checkout, now.person, now.day, checkout_months(target.tier), {}, now.target);
  if (!first) return;
  users_[static_cast<std::size_t>(now.target)].push_back(now.person);
  stints_.push_back({now.person, now.target, now.day + 1, std::min(one.leaves, last_day)});
  if (one.assessor) become_expert(now.person, now.target, now.day);
  const int height = one.heights[static_cast<std::size_t>(target.column)];
  if (target.tier < height || (target.tier < 4 && dice_.percent(35))) {
    const int pace = one.assessor ? dice_.from(3, 30) : dice_.from(20, 200);
    plan(now.day + pace, Event::learn, now.person, now.target + columns());
  }
}

void Decade::appoint(const Planned& now) {
  Life& one = life(now.person);
  if (now.left < 0) return dismiss(now.person, now.day);
  one.appointed = true;
  const auto until = appointed_until(now.person, now.day);
  if (now.person < founders_ || now.person % 4 == 0) {
    appointments_[now.person].push_back(
        add(now.day, Appoint{id(now.person), Everything{}, false, {}}, before_opening));
  } else if (now.person % 4 == 1) {
    for (int tier = 1; tier <= 4; ++tier) {
      appointments_[now.person].push_back(
          add(now.day, Appoint{id(now.person), TierScope{tier}, false, {}}, before_opening));
    }
  }
  for (int target = 0; target < static_cast<int>(world_.targets.size()); ++target) {
    if (one.checked_out[static_cast<std::size_t>(target)] != no_day)
      appoint_on(now.person, target, now.day, until);
  }
  if (until) plan(now.day + 725, Event::appoint, now.person);
  if (one.leaves < last_day && !until) plan(one.leaves + (-1), Event::appoint, now.person, -1, -1);
}

void Decade::dismiss(int person, Day day) {
  for (const RecordId& appointment : appointments_[person]) add(day, Dismiss{appointment});
}

std::optional<Day> Decade::appointed_until(int person, Day day) const {
  return person >= founders_ && person % 4 == 2 ? std::optional(day + 730) : std::nullopt;
}

void Decade::appoint_on(int person, int target, Day day, std::optional<Day> until) {
  auto& experts = experts_[static_cast<std::size_t>(target)];
  if (std::find(experts.begin(), experts.end(), person) == experts.end()) experts.push_back(person);
  if (person < founders_ || person % 4 < 2) return;
  appointments_[person].push_back(
      add(day, Appoint{id(person), TargetScope{target_at(target).name}, false, until}, before_opening));
}

void Decade::become_expert(int person, int target, Day day) {
  if (!life(person).appointed || person < founders_) {
    if (person < founders_) experts_[static_cast<std::size_t>(target)].push_back(person);
    return;
  }
  appoint_on(person, target, day, appointed_until(person, day));
}

void Decade::publish(const Planned& now) {
  const int revision = ++revisions_[now.what];
  add(now.day, Publish{now.what, revision}, before_opening);
  if (revision == 1) return;
  const bool lesson = now.what.find("safety") == 0;
  if (!lesson && now.what.find("-intro") != std::string::npos) return;
  for (int p = 0; p < world_.size.people; ++p) {
    const Life& one = life(p);
    if (one.done.count(now.what) == 0 || one.leaves <= now.day) continue;
    const int roll = dice_.below(100);
    if (roll >= one.care + 8) continue;
    const int late = roll < one.care ? dice_.from(1, one.care >= 100 ? 50 : 88) : dice_.from(90, 300);
    plan(now.day + late, lesson ? Event::lesson : Event::quiz, p, -1, 0, now.what);
  }
  for (int t = 0; t < static_cast<int>(world_.targets.size()); ++t) {
    if (target_at(t).tier != 4 || target_at(t).name != now.what) continue;
    train(t, now.day);
    check_out_anew(t, now.day, 330);
  }
}

void Decade::check_out_anew(int target, Day day, int within) {
  for (const int p : users_[static_cast<std::size_t>(target)]) {
    if (life(p).leaves <= day || life(p).assessor || !dice_.percent(life(p).care)) continue;
    plan(day + dice_.from(11, within), Event::checkout, p, target, 1);
  }
}

}  // namespace wm::bench
