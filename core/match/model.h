#pragma once
// The integer program of one question: a column for each way, for each one served, and for what days cost.
#include <map>
#include <utility>

#include "core/match/program.h"
#include "core/match/ways.h"

namespace wm::match {

class Model {
 public:
  explicit Model(const Indexed& indexed);

  /// Trips and gaps, which the first aims do not need. Call once.
  void add_days();
  /// What is to be made as great as can be: fewer is a greater negative.
  std::vector<Term> sum(Aim aim) const;
  /// The part of that sum which is the same whatever is proposed.
  std::int64_t beside(Aim aim) const;
  /// From now on nothing that is worse than this at `aim`.
  void keep(Aim aim, std::int64_t at);

  Values values(const std::vector<Placed>& placed) const;
  /// What whole values say, and whatever fits beside.
  std::vector<Placed> placed(const Values& whole) const;
  /// A proposal that leans on relaxed values: what is nearest to whole first, then whatever still fits.
  std::vector<Placed> rounded(const Values& relaxed) const;
  /// The same people served on fewer days, where those of one day find room on others.
  std::vector<Placed> fewer_trips(std::vector<Placed> placed) const;

  Program program;

 private:
  struct Rest {
    int person = 0;
    std::int64_t from = 0;
    int column = 0;
  };
  /// A day of somebody who assesses: cells between the points at which anything may begin or end.
  struct OneDay {
    int person = 0, day = 0;
    bool comes_anyway = false;
    std::vector<std::int64_t> points;  // cell i lies between points i and i + 1
    std::vector<int> there,
        arrives;    // columns, one for each cell: is there; was not there in the cell before
    int comes = 0;  // column
    std::int64_t booked_seconds = 0, booked_gaps = 0;
  };
  struct Part {
    std::int64_t from = 0, to = 0;
    int column = 0;
  };

  void add_served();
  void add_cliques();
  void add_longest_days();
  void add_rests();
  void add_rests_of(int person, const Stretch& stretch);
  void add_day(int person, int day, const std::vector<std::size_t>& ways);
  void cliques(std::vector<Part> parts, double most);
  std::vector<Part> parts_of(int person) const;
  std::vector<std::size_t> by_wish(const Values& relaxed) const;
  bool place(Board& board, const Way& way) const;
  void fill(Board& board, const Values& leaning_on) const;

  const Indexed& indexed_;
  Ways ways_;
  std::vector<std::vector<std::size_t>> ways_of_;       // by person: those they take part in
  std::vector<std::vector<std::size_t>> ways_of_kind_;  // by kind
  std::vector<int> way_columns_;
  std::vector<std::vector<int>> served_;  // by kind, as its waiters
  std::vector<Rest> rests_;
  std::vector<OneDay> days_;
  std::map<std::size_t, std::pair<std::size_t, std::size_t>> kind_of_;  // waiter: kind, place in it
};

}  // namespace wm::match
