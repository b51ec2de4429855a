// Ten years of the shop, day by day. The makers of records here only guess who may do what (they follow the
// rules as a careful shop would, with slips): what the records mean is for the engine to say.
#include "world.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <queue>
#include <random>
#include <tuple>

namespace wm::bench {

namespace {

/// Numbers that come out the same everywhere: the engine is specified, what the library's distributions do
/// with it is not.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  /// 0 to n - 1.
  int below(std::int64_t n) { return static_cast<int>((engine_() >> 16) % static_cast<std::uint64_t>(n)); }
  /// from to to.
  int from(int from, int to) { return from + below(to - from + 1); }
  bool percent(int p) { return below(100) < p; }
  template <class T>
  const T& one_of(const std::vector<T>& of) {
    return of[static_cast<std::size_t>(below(static_cast<std::int64_t>(of.size())))];
  }

 private:
  std::mt19937_64 engine_;
};

const Day first_day = day_of({2016, 1, 4});
const Day last_day = day_of({2025, 12, 30});
const Day founding_ends = day_of({2017, 12, 31});
const Day no_day{0};
constexpr int before_opening = 8;

enum class Event {
  join,
  paper,     // what: a document
  lesson,    // what: a lesson
  quiz,      // what: a quiz
  learn,     // target: begins on it
  session,   // target, left: supervised sessions before the check-out
  practise,  // target, left: supervised sessions, no check-out meant
  checkout,  // target; left: 1 where it is meant even if the last one is still good
  appoint,
  publish,  // what: an item
  nightly   // incidents, suspensions, locks, changes
};

struct Planned {
  Day day;
  std::uint64_t order;
  Event event;
  int person = -1, target = -1, left = 0;
  std::string what;
  bool operator<(const Planned& other) const {  // the earliest is on top of the queue
    return std::tie(other.day, other.order) < std::tie(day, order);
  }
};

struct Life {
  Day joins, leaves;
  bool assessor = false;
  int care = 50;                 // of 100: how likely something is renewed in time
  std::vector<int> heights;      // by column: up to which tier the person goes
  std::vector<Day> checked_out;  // by target: the last one that holds, no_day where none does
  std::vector<bool> begun;       // by target: checked out at some time
  struct Done {
    Day day;
    int revision;
  };
  std::map<std::string, Done> done;                // lessons heard and quizzes passed, the last time
  std::map<std::string, std::vector<Day>> failed;  // quizzes
  bool appointed = false;
};

/// From one check-out on one target on: a span in which it is used.
struct Stint {
  int person, target;
  Day from, to;
};

class Decade {
 public:
  Decade(const WorldSize& size, std::uint64_t seed) : dice_(seed) {
    world_.size = size;
    world_.targets = world_targets(size.targets);
    world_.shop.zone = *Zone::named("America/Chicago");
    world_.shop.rulebooks = world_rulebooks(world_.targets, world_.shop.zone);
    world_.now = world_.shop.zone.instant({last_day, 18, 0, 0});
    experts_.resize(world_.targets.size());
    users_.resize(world_.targets.size());
  }

  World live() {
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

 private:
  // --- who and what there is -------------------------------------------------------------------------------

  void make_machines() {
    for (int i = 0; i < world_.size.machines; ++i) {
      const WorldTarget& target = target_at(i % static_cast<int>(world_.targets.size()));
      world_.shop.machines.push_back({"m" + padded(i, 3), target.machine_class});
    }
  }

  void make_people() {
    const int people = world_.size.people, assessors = world_.size.assessors;
    founders_ = std::max(3, assessors / 12);
    for (int i = 0; i < people; ++i) {
      world_.shop.people.push_back("p" + padded(i, 4));
      lives_.push_back(i < assessors ? assessor(i) : member(i));
      plan(lives_.back().joins, Event::join, i);
    }
  }

  Life assessor(int i) {
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

  Life member(int) {
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

  /// Each lesson and quiz anew every two to four years, a sheet of tier 4 once.
  void first_publications() {
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

  void publish_on(Day day, const std::string& item) { plan(day, Event::publish, -1, -1, 0, item); }

  // --- what happens ----------------------------------------------------------------------------------------

  void happen(const Planned& now) {
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

  void join(const Planned& now) {
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

  void found(int p, Day day) {
    life(p).appointed = true;
    add(day, Appoint{id(p), Everything{}, true, founding_ends}, before_opening);
  }

  /// A paper and, for those that run out, the next one: mostly in time, sometimes with a gap.
  void paper(const Planned& now) {
    const bool dated = now.what == "membership" && dice_.percent(30);
    add(now.day, Document{id(now.person), now.what, dated ? std::optional(now.day + 365) : std::nullopt});
    if (now.what == "course" || now.what == "certificate") return;
    const int year = now.what == "refresher" ? 730 : 360;
    if (const auto late = lateness(now.person))
      plan(now.day + year + *late, Event::paper, now.person, -1, 0, now.what);
  }

  /// Days after the due day; nothing: never again.
  std::optional<int> lateness(int person) {
    const int care = life(person).care;
    const int roll = dice_.below(100);
    if (roll < care) return dice_.from(-30, care >= 100 ? -6 : 2);
    if (roll < care + (100 - care) * 3 / 4) return dice_.from(5, 120);
    return dice_.percent(70) ? std::optional(dice_.from(120, 500)) : std::nullopt;
  }

  /// Done already, in the revision that there is, and with a third of its time still to go.
  bool up_to_date(const Planned& now, int months) {
    const auto found = life(now.person).done.find(now.what);
    return found != life(now.person).done.end() && found->second.revision == revision(now.what) &&
           now.day < found->second.day + months * 20;
  }

  void lesson(int person, Day day, const std::string& what) {
    add(day, Lesson{id(person), what, revision(what)});
    life(person).done[what] = {day, revision(what)};
    if (what.starts_with("safety")) again(Event::lesson, person, day, 60, what);
  }

  bool take_quiz(int person, Day day, const std::string& what) {
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

  /// A few come back too soon for the attempt to count.
  int days_to_retry(int person, Day day, const std::string& what) {
    if (!life(person).assessor && dice_.percent(4)) return 1;
    const auto& failed = life(person).failed[what];
    const bool often = failed.size() >= 3 && failed[failed.size() - 3] > day + (-31);
    return often ? 32 : dice_.from(2, 9);
  }

  void again(Event event, int person, Day day, int months, const std::string& what, int target = -1) {
    if (const auto late = lateness(person)) {
      plan(end(day, {PeriodUnit::months, months}) + *late, event, person, target, 0, what);
    }
  }

  /// The lessons and the quiz, then sessions, then the check-out.
  void learn(const Planned& now) {
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

  void session(const Planned& now) {
    if (!supervise(now))
      return plan(now.day + dice_.from(5, 20), Event::session, now.person, now.target, now.left);
    if (now.left > 1) {
      plan(now.day + dice_.from(2, 15), Event::session, now.person, now.target, now.left - 1);
    } else {
      plan(now.day + dice_.from(1, 15), Event::checkout, now.person, now.target, 1);
    }
  }

  void practise(const Planned& now) {
    supervise(now);
    if (now.left > 1)
      plan(now.day + dice_.from(20, 70), Event::practise, now.person, now.target, now.left - 1);
  }

  bool supervise(const Planned& now) {
    const int tier = target_at(now.target).tier;
    const bool by_assessor = tier >= 3 || now.left <= 1 || life(now.person).assessor || dice_.percent(50);
    int supervisor = by_assessor ? -1 : some_user(now.target, now.day, now.person);
    if (supervisor < 0) supervisor = some_expert(now.target, now.day, now.person);
    if (supervisor < 0) return false;
    add(now.day,
        Supervised{id(now.person), target_at(now.target).name, dice_.from(3, 12) * 10, id(supervisor)});
    return true;
  }

  void checkout(const Planned& now) {
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

  /// Assessors by standing: some for everything, some for tiers, most machine by machine.
  void appoint(const Planned& now) {
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

  void dismiss(int person, Day day) {
    for (const RecordId& appointment : appointments_[person]) add(day, Dismiss{appointment});
  }

  std::optional<Day> appointed_until(int person, Day day) const {
    return person >= founders_ && person % 4 == 2 ? std::optional(day + 730) : std::nullopt;
  }

  void appoint_on(int person, int target, Day day, std::optional<Day> until) {
    auto& experts = experts_[static_cast<std::size_t>(target)];
    if (std::find(experts.begin(), experts.end(), person) == experts.end()) experts.push_back(person);
    if (person < founders_ || person % 4 < 2) return;
    appointments_[person].push_back(
        add(day, Appoint{id(person), TargetScope{target_at(target).name}, false, until}, before_opening));
  }

  void become_expert(int person, int target, Day day) {
    if (!life(person).appointed || person < founders_) {
      if (person < founders_) experts_[static_cast<std::size_t>(target)].push_back(person);
      return;
    }
    appoint_on(person, target, day, appointed_until(person, day));
  }

  /// Whoever has done the old one is asked to do the new one within the changeover; some are late.
  void publish(const Planned& now) {
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

  void check_out_anew(int target, Day day, int within) {
    for (const int p : users_[static_cast<std::size_t>(target)]) {
      if (life(p).leaves <= day || life(p).assessor || !dice_.percent(life(p).care)) continue;
      plan(day + dice_.from(11, within), Event::checkout, p, target, 1);
    }
  }

  // --- what goes wrong, and repairs ------------------------------------------------------------------------

  void nightly(Day day) {
    const int share = world_.size.people;  // of 5,000: how much of W's daily events
    const auto happens = [&](int per_mille) {
      return dice_.below(1000LL * 5000) < per_mille * static_cast<std::int64_t>(share);
    };
    if (happens(800)) incident(day);
    if (happens(160)) suspend(day);
    if (happens(900)) lock_out(day);
    if (dice_.below(1000) < 25) change(day);
    for (int t = 0; t < static_cast<int>(world_.targets.size()); ++t) {
      if (day > founding_ends && (day.number - first_day.number) % 360 == 5 * t + 2) train(t, day);
    }
    plan(day + 1, Event::nightly);
  }

  void incident(Day day) {
    const int target = dice_.below(static_cast<std::int64_t>(world_.targets.size()));
    const int p = some_user(target, day, -1);
    if (p < 0) return;
    const int roll = dice_.below(100);
    const int severity = roll < 3 ? 1 : roll < 12 ? 2 : roll < 45 ? 3 : 4;
    const Part part = dice_.percent(80) ? Part::operating : dice_.percent(50) ? Part::hurt : Part::saw;
    add(day, Incident{id(p), target_at(target).name, severity, part},
        open_day(day).number % 7 == 2 ? 17 : 21);
    if (severity <= 2 && part == Part::operating) {
      for (int t = 0; t < static_cast<int>(world_.targets.size()); ++t) {
        Day& lost = life(p).checked_out[static_cast<std::size_t>(t)];
        if (target_at(t).machine_class != target_at(target).machine_class || lost == no_day) continue;
        lost = no_day;
        plan(day + dice_.from(1, life(p).assessor ? 5 : 60), Event::checkout, p, t);
      }
    }
  }

  void suspend(Day day) {
    const int p = dice_.below(world_.size.people);
    if (life(p).joins >= day || life(p).leaves <= day || life(p).assessor) return;
    const int roll = dice_.below(3);
    const Scope scope = roll == 0   ? Scope{Everything{}}
                        : roll == 1 ? Scope{TierScope{dice_.from(1, 4)}}
                                    : Scope{TargetScope{dice_.one_of(world_.targets).machine_class}};
    const bool dated = dice_.percent(60);
    const RecordId record =
        add(day, Suspend{id(p), scope, dated ? std::optional(day + dice_.from(7, 120)) : std::nullopt});
    const Day back = day + dice_.from(3, 90);
    if ((!dated || dice_.percent(20)) && back <= last_day) add(back, Reinstate{record});
  }

  void lock_out(Day day) {
    if (world_.shop.machines.empty()) return;
    const RecordId record = add(day, Lockout{dice_.one_of(world_.shop.machines).id});
    const Day off = day + dice_.from(1, 12);
    if (dice_.percent(97) && off <= last_day) add(off, Release{record});
  }

  void change(Day day) {
    const int target = dice_.below(static_cast<std::int64_t>(world_.targets.size()));
    add(day, Change{target_at(target).name}, before_opening);
    if (target_at(target).column % 3 != 0) return;
    for (const int p : users_[static_cast<std::size_t>(target)]) {
      life(p).checked_out[static_cast<std::size_t>(target)] = no_day;
    }
    train(target, day);
    check_out_anew(target, day, 60);
  }

  /// Nobody is checked out on a changed machine: somebody is shown it by its maker and begins anew. Every
  /// year the same goes for each machine, so that one bad check-out does not spoil all that rest on it.
  void train(int target, Day day) {
    const auto& experts = experts_[static_cast<std::size_t>(target)];
    for (int tries = 0; tries < 30 && !experts.empty(); ++tries) {
      const int trainer = dice_.one_of(experts);
      if (life(trainer).leaves <= day + 60) continue;
      add(day, Appoint{id(trainer), TargetScope{target_at(target).name}, true, day + 60}, before_opening);
      trainers_[target] = {trainer, day + 50};
      for (const int p : experts) {
        if (p != trainer && life(p).leaves > day)
          plan(day + dice_.from(1, 10), Event::checkout, p, target, 1);
      }
      return plan(day + dice_.from(12, 25), Event::checkout, trainer, target, 1);
    }
  }

  // --- uses, to the number wanted --------------------------------------------------------------------------

  void fill_with_uses() {
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
      for (Day day = stint.from + dice_.below(60); day < stint.to;
           day = day + dice_.from(rhythm / 2, rhythm)) {
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

  void use(const Stint& stint, Day day) { add(day, Use{id(stint.person), target_at(stint.target).name}); }

  void finish() {
    for (Record& record : world_.shop.records) {
      const bool may_go =
          std::holds_alternative<Use>(record.fact) || std::holds_alternative<Document>(record.fact);
      if (may_go && dice_.below(1000) == 0) record.voided = record.recorded + dice_.from(600, 200'000);
    }
    std::sort(world_.shop.records.begin(), world_.shop.records.end(),
              [](const Record& a, const Record& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); });
  }

  // --- small things ----------------------------------------------------------------------------------------

  /// Weekdays from 10 to 22, Saturdays from 9 to 18, Sundays closed: what falls on one waits until Monday.
  static Day open_day(Day day) { return (day.number + 3) % 7 == 6 ? day + 1 : day; }
  Instant open_time(Day day, int hour) {
    day = open_day(day);
    const bool saturday = (day.number + 3) % 7 == 5;  // 1970-01-01 was a Thursday
    const int opens = saturday ? 9 : 10, hours = saturday ? 9 : 12;
    const int h = hour >= 0
                      ? hour
                      : opens + (dice_.percent(60) ? hours / 2 + dice_.below(hours / 2) : dice_.below(hours));
    return world_.shop.zone.instant({day, h, dice_.below(60), dice_.below(60)});
  }

  RecordId add(Day day, Fact fact, int hour = -1) {
    Record record;
    record.id = "r" + padded(static_cast<int>(world_.shop.records.size()), 7);
    record.at = std::min(open_time(day, hour), world_.now);
    record.recorded = record.at + (dice_.percent(90) ? dice_.below(900) : dice_.below(4 * 86400));
    record.fact = std::move(fact);
    world_.shop.records.push_back(std::move(record));
    return world_.shop.records.back().id;
  }

  void plan(Day day, Event event, int person = -1, int target = -1, int left = 0, std::string what = {}) {
    planned_.push({open_day(day), order_++, event, person, target, left, std::move(what)});
  }

  /// Somebody with a check-out that has not run out; -1 where none is found in a few tries.
  int some_of(const std::vector<int>& people, int target, Day day, int but) {
    for (int tries = 0; tries < 20 && !people.empty(); ++tries) {
      const int p = dice_.one_of(people);
      const bool there = life(p).leaves > day && life(p).joins < day;
      if (p != but && there && ((p < founders_ && day <= founding_ends) || still_good(p, target, day)))
        return p;
    }
    return -1;
  }
  /// From tier 3 on, a standing rests on the one below.
  bool still_good(int p, int target, Day day) {
    const Day since = life(p).checked_out[static_cast<std::size_t>(target)];
    const int tier = target_at(target).tier;
    if (since == no_day || day > since + checkout_months(tier) * 30) return false;
    return tier < 3 || still_good(p, target - columns(), day);
  }
  int some_user(int target, Day day, int but) {
    return some_of(users_[static_cast<std::size_t>(target)], target, day, but);
  }
  int some_expert(int target, Day day, int but) {
    if (day <= founding_ends && dice_.percent(30)) return founder_but(but);
    if (const auto at = trainers_.find(target);
        at != trainers_.end() && at->second.until > day && at->second.person != but && dice_.percent(50)) {
      return at->second.person;
    }
    const int found = some_of(experts_[static_cast<std::size_t>(target)], target, day, but);
    return found < 0 && day <= founding_ends ? founder_but(but) : found;
  }
  int founder_but(int but) {
    const int p = dice_.below(founders_);
    return p == but ? (p + 1) % founders_ : p;
  }

  int revision(const std::string& item) const {
    const auto found = revisions_.find(item);
    return found == revisions_.end() ? 0 : found->second;
  }
  int columns() const { return static_cast<int>(world_.targets.size()) / 4; }
  const WorldTarget& target_at(int i) const { return world_.targets[static_cast<std::size_t>(i)]; }
  Life& life(int p) { return lives_[static_cast<std::size_t>(p)]; }
  const PersonId& id(int p) const { return world_.shop.people[static_cast<std::size_t>(p)]; }
  static int top(const Life& life) { return *std::max_element(life.heights.begin(), life.heights.end()); }
  static std::string padded(int number, std::size_t digits) {
    const std::string text = std::to_string(number);
    return std::string(digits - std::min(digits, text.size()), '0') + text;
  }

  Dice dice_;
  World world_;
  int founders_ = 0;
  std::vector<Life> lives_;
  std::vector<std::vector<int>> experts_, users_;  // by target: assessors of it; checked out on it once
  std::map<int, std::vector<RecordId>> appointments_;
  struct Trainer {
    int person;
    Day until;
  };
  std::map<int, Trainer> trainers_;  // by target that was changed
  std::map<std::string, int> revisions_;
  std::vector<std::string> sheet_;
  std::vector<Stint> stints_;
  std::priority_queue<Planned> planned_;
  std::uint64_t order_ = 0;
};

}  // namespace

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
