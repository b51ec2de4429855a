#pragma once
// Ten years of the shop, day by day. The makers of records here only guess who may do what (they follow the
// rules as a careful shop would, with slips): what the records mean is for the engine to say.
#include <algorithm>
#include <map>
#include <optional>
#include <queue>
#include <random>
#include <string>
#include <tuple>
#include <vector>

#include "world.h"

namespace wm::bench {

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

inline const Day first_day = day_of({2016, 1, 4});
inline const Day last_day = day_of({2025, 12, 30});
inline const Day founding_ends = day_of({2017, 12, 31});
inline const Day no_day{0};
inline constexpr int before_opening = 8;

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

/// Lives a shop through ten years, day by day, drawing each number once in a fixed order.
class Decade {
 public:
  Decade(const WorldSize& size, std::uint64_t seed);
  World live();

 private:
  // Who and what there is
  void make_machines();
  void make_people();
  Life assessor(int i);
  Life member(int);
  /// Each lesson and quiz anew every two to four years, a sheet of tier 4 once.
  void first_publications();
  void publish_on(Day day, const std::string& item);

  // What happens
  void happen(const Planned& now);
  void join(const Planned& now);
  void found(int p, Day day);
  /// A paper and, for those that run out, the next one: mostly in time, sometimes with a gap.
  void paper(const Planned& now);
  /// Days after the due day; nothing: never again.
  std::optional<int> lateness(int person);
  /// Done already, in the revision that there is, and with a third of its time still to go.
  bool up_to_date(const Planned& now, int months);
  void lesson(int person, Day day, const std::string& what);
  bool take_quiz(int person, Day day, const std::string& what);
  /// A few come back too soon for the attempt to count.
  int days_to_retry(int person, Day day, const std::string& what);
  void again(Event event, int person, Day day, int months, const std::string& what, int target = -1);
  /// The lessons and the quiz, then sessions, then the check-out.
  void learn(const Planned& now);
  void session(const Planned& now);
  void practise(const Planned& now);
  bool supervise(const Planned& now);
  void checkout(const Planned& now);
  /// Assessors by standing: some for everything, some for tiers, most machine by machine.
  void appoint(const Planned& now);
  void dismiss(int person, Day day);
  std::optional<Day> appointed_until(int person, Day day) const;
  void appoint_on(int person, int target, Day day, std::optional<Day> until);
  void become_expert(int person, int target, Day day);
  /// Whoever has done the old one is asked to do the new one within the changeover; some are late.
  void publish(const Planned& now);
  void check_out_anew(int target, Day day, int within);

  // What goes wrong, and repairs
  void nightly(Day day);
  void incident(Day day);
  void suspend(Day day);
  void lock_out(Day day);
  void change(Day day);
  /// Nobody is checked out on a changed machine: somebody is shown it by its maker and begins anew. Every
  /// year the same goes for each machine, so that one bad check-out does not spoil all that rest on it.
  void train(int target, Day day);

  // Uses, to the number wanted
  void fill_with_uses();
  void use(const Stint& stint, Day day);
  void finish();

  // Small things
  /// Weekdays from 10 to 22, Saturdays from 9 to 18, Sundays closed: what falls on one waits until Monday.
  static Day open_day(Day day) { return (day.number + 3) % 7 == 6 ? day + 1 : day; }
  Instant open_time(Day day, int hour);
  RecordId add(Day day, Fact fact, int hour = -1);
  void plan(Day day, Event event, int person = -1, int target = -1, int left = 0, std::string what = {});
  /// Somebody with a check-out that has not run out; -1 where none is found in a few tries.
  int some_of(const std::vector<int>& people, int target, Day day, int but);
  /// From tier 3 on, a standing rests on the one below.
  bool still_good(int p, int target, Day day);
  int some_user(int target, Day day, int but) {
    return some_of(users_[static_cast<std::size_t>(target)], target, day, but);
  }
  int some_expert(int target, Day day, int but);
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

}  // namespace wm::bench
