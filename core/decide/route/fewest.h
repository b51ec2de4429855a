#pragma once
// The fewest picks that make a goal hold, where goals only ever ask for more picks: a covering problem,
// solved as an integer program by GLPK.
#include <cstdint>
#include <map>
#include <vector>

namespace wm {

/// Goals and picks are numbered in the order in which they are made, so that a goal can only name what was
/// there before it: nothing runs in a circle.
class Covering {
 public:
  using Goal = int;
  using Pick = int;
  template <class Of>
  struct Part {
    Of of;
    std::int64_t weight = 1;
    auto operator<=>(const Part&) const = default;
  };

  static constexpr Goal never = 0, always = 1;

  Covering();

  /// Something that may be taken up to `most` times (at least 1), as far as `given` holds. Among answers with
  /// equally few picks the one of least `dislike`, 0 (best) to 1, is looked for.
  Pick pick(std::int64_t most, Goal given = always, double dislike = 0);
  /// Holds where the weights of what was taken and of the goals that hold add up to `needed`.
  Goal enough(std::vector<Part<Pick>> picks, std::vector<Part<Goal>> goals, std::int64_t needed);
  Goal all(std::vector<Goal> goals);
  Goal some(std::int64_t count, const std::vector<Goal>& goals);

  struct Answer {
    bool fewest = false;              // proved so
    std::vector<std::int64_t> taken;  // by pick; nothing of it can be left out
  };
  /// `goal` must be one that holds when everything is taken. After `seconds` the best answer found so far.
  Answer fewest(Goal goal, double seconds) const;
  bool holds(Goal goal, const std::vector<std::int64_t>& taken) const;
  /// Whether each goal holds.
  std::vector<bool> all_holding(const std::vector<std::int64_t>& taken) const;

 private:
  struct OnePick {
    std::int64_t most;
    Goal given;
    double dislike;
  };
  struct OneGoal {
    std::vector<Part<Pick>> picks;
    std::vector<Part<Goal>> goals;
    std::int64_t needed = 0;
    auto operator<=>(const OneGoal&) const = default;
  };

  std::vector<bool> needed_for(Goal goal) const;
  std::vector<bool> outdone(const std::vector<bool>& needed) const;
  void leave_out_what_can_be(Goal goal, std::vector<std::int64_t>& taken) const;

  std::vector<OnePick> picks_;
  std::vector<OneGoal> goals_;
  std::map<OneGoal, Goal> same_;
};

}  // namespace wm
