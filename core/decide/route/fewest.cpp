#include "core/decide/route/fewest.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <tuple>

namespace wm {

namespace {

struct DeleteProblem {
  void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};

/// Small enough that the dislikes of all picks together never weigh as much as one pick.
constexpr double least_weight = 1e-4;

/// The integer program: a column for each pick and each goal that matters, a row for each thing asked.
class Program {
 public:
  Program() : problem_(glp_create_prob()) { glp_set_obj_dir(problem_.get(), GLP_MIN); }

  int column(std::int64_t most, double cost) {
    const int column = glp_add_cols(problem_.get(), 1);
    glp_set_col_kind(problem_.get(), column, most == 1 ? GLP_BV : GLP_IV);
    if (most != 1) glp_set_col_bnds(problem_.get(), column, GLP_DB, 0, static_cast<double>(most));
    glp_set_obj_coef(problem_.get(), column, cost);
    return column;
  }
  void must_hold(int column) { glp_set_col_bnds(problem_.get(), column, GLP_FX, 1, 1); }
  /// The columns, each with its coefficient, add up to 0 or more.
  void row(const std::vector<std::pair<int, double>>& terms) {
    const int row = glp_add_rows(problem_.get(), 1);
    glp_set_row_bnds(problem_.get(), row, GLP_LO, 0, 0);
    std::vector<int> columns{0};
    std::vector<double> coefficients{0};
    for (const auto& [column, coefficient] : terms) {
      columns.push_back(column);
      coefficients.push_back(coefficient);
    }
    glp_set_mat_row(problem_.get(), row, static_cast<int>(terms.size()), columns.data(), coefficients.data());
  }

  /// Whether an answer was found; `proved` where it is the best there is.
  bool solve(double seconds, bool& proved) {
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.presolve = GLP_ON;
    how.tm_lim = static_cast<int>(seconds * 1000);
    how.mir_cuts = how.cov_cuts = how.clq_cuts = GLP_ON;
    how.fp_heur = GLP_ON;
    glp_term_out(GLP_OFF);
    const int error = glp_intopt(problem_.get(), &how);
    const int status = glp_mip_status(problem_.get());
    proved = error == 0 && status == GLP_OPT;
    return status == GLP_OPT || status == GLP_FEAS;
  }
  std::int64_t value(int column) const { return std::llround(glp_mip_col_val(problem_.get(), column)); }

 private:
  std::unique_ptr<glp_prob, DeleteProblem> problem_;
};

/// In order, each once: what is named twice weighs twice. No weight above what is needed, which says the same
/// and more to the solver.
template <class Parts>
Parts merged(Parts parts, std::int64_t needed) {
  std::sort(parts.begin(), parts.end());
  Parts each;
  for (const auto& part : parts) {
    if (!each.empty() && each.back().of == part.of) {
      each.back().weight += part.weight;
    } else {
      each.push_back(part);
    }
  }
  for (auto& part : each) part.weight = std::min(part.weight, needed);
  return each;
}

template <class Parts>
std::int64_t weight_of(const Parts& parts) {
  std::int64_t weight = 0;
  for (const auto& part : parts) weight += part.weight;
  return weight;
}

}  // namespace

Covering::Covering() {
  goals_.push_back({{}, {}, 1});  // never
  goals_.push_back({{}, {}, 0});  // always
}

Covering::Pick Covering::pick(std::int64_t most, Goal given, double dislike) {
  picks_.push_back({most, given, dislike});
  return static_cast<Pick>(picks_.size() - 1);
}

Covering::Goal Covering::enough(std::vector<Part<Pick>> picks, std::vector<Part<Goal>> goals,
                                std::int64_t needed) {
  std::erase_if(picks,
                [&](const auto& part) { return picks_[static_cast<std::size_t>(part.of)].given == never; });
  std::erase_if(goals, [&](const auto& part) {
    if (part.of == always) needed -= part.weight;
    return part.of == always || part.of == never;
  });
  if (needed <= 0) return always;
  std::int64_t at_most = weight_of(goals);
  for (const auto& part : picks) at_most += part.weight * picks_[static_cast<std::size_t>(part.of)].most;
  if (at_most < needed) return never;
  if (picks.empty() && goals.size() == 1) return goals.front().of;
  OneGoal made{merged(std::move(picks), needed), merged(std::move(goals), needed), needed};
  const auto [place, fresh] = same_.emplace(made, static_cast<Goal>(goals_.size()));
  if (fresh) goals_.push_back(std::move(made));
  return place->second;
}

Covering::Goal Covering::all(std::vector<Goal> goals) {
  std::sort(goals.begin(), goals.end());
  goals.erase(std::unique(goals.begin(), goals.end()), goals.end());
  return some(static_cast<std::int64_t>(goals.size()), goals);
}

Covering::Goal Covering::some(std::int64_t count, const std::vector<Goal>& goals) {
  std::vector<Part<Goal>> parts;
  for (const Goal goal : goals) parts.push_back({goal});
  return enough({}, std::move(parts), count);
}

std::vector<bool> Covering::all_holding(const std::vector<std::int64_t>& taken) const {
  std::vector<bool> holding(goals_.size(), false);
  holding[always] = true;
  for (std::size_t goal = always + 1; goal < goals_.size(); ++goal) {
    std::int64_t sum = 0;
    for (const auto& part : goals_[goal].picks) {
      const auto pick = static_cast<std::size_t>(part.of);
      if (holding[static_cast<std::size_t>(picks_[pick].given)]) sum += part.weight * taken[pick];
    }
    for (const auto& part : goals_[goal].goals)
      if (holding[static_cast<std::size_t>(part.of)]) sum += part.weight;
    holding[goal] = sum >= goals_[goal].needed;
  }
  return holding;
}

bool Covering::holds(Goal goal, const std::vector<std::int64_t>& taken) const {
  return all_holding(taken)[static_cast<std::size_t>(goal)];
}

std::vector<bool> Covering::needed_for(Goal goal) const {
  std::vector<bool> needed(goals_.size(), false);
  needed[static_cast<std::size_t>(goal)] = true;
  for (std::size_t each = goals_.size(); each-- > 0;) {
    if (!needed[each]) continue;
    for (const auto& part : goals_[each].goals) needed[static_cast<std::size_t>(part.of)] = true;
    for (const auto& part : goals_[each].picks)
      needed[static_cast<std::size_t>(picks_[static_cast<std::size_t>(part.of)].given)] = true;
  }
  return needed;
}

void Covering::leave_out_what_can_be(Goal goal, std::vector<std::int64_t>& taken) const {
  for (std::size_t pick = picks_.size(); pick-- > 0;) {
    // The least that is enough lies between none and what is taken: more never hurts.
    std::int64_t least = 0, most = taken[pick];
    while (least < most) {
      taken[pick] = (least + most) / 2;
      if (holds(goal, taken)) {
        most = taken[pick];
      } else {
        least = taken[pick] + 1;
      }
    }
    taken[pick] = least;
  }
}

/// Picks that another can take the place of wherever they serve: taken as often, under no harder condition,
/// and of two that serve the same the one less liked. What is left reaches as much with as few.
std::vector<bool> Covering::outdone(const std::vector<bool>& needed) const {
  std::vector<std::map<Goal, std::int64_t>> serves(picks_.size());
  for (std::size_t each = always + 1; each < goals_.size(); ++each) {
    if (!needed[each]) continue;
    for (const auto& part : goals_[each].picks)
      serves[static_cast<std::size_t>(part.of)][static_cast<Goal>(each)] = part.weight;
  }
  const auto takes_place = [&](std::size_t other, std::size_t pick) {
    const OnePick &a = picks_[other], &b = picks_[pick];
    if (other == pick || a.most < b.most || (a.given != always && a.given != b.given)) return false;
    for (const auto& [goal, weight] : serves[pick]) {
      const auto found = serves[other].find(goal);
      if (found == serves[other].end() || found->second < weight) return false;
    }
    const bool same = serves[other].size() == serves[pick].size() && a.given == b.given && a.most == b.most;
    return !same || std::tie(a.dislike, other) < std::tie(b.dislike, pick);
  };
  std::vector<bool> out(picks_.size(), false);
  for (std::size_t pick = 0; pick < picks_.size(); ++pick) {
    if (serves[pick].empty()) continue;
    const auto goal = static_cast<std::size_t>(serves[pick].begin()->first);
    const auto& rivals = goals_[goal].picks;
    out[pick] = std::any_of(rivals.begin(), rivals.end(), [&](const auto& rival) {
      return takes_place(static_cast<std::size_t>(rival.of), pick);
    });
  }
  return out;
}

Covering::Answer Covering::fewest(Goal goal, double seconds) const {
  Answer answer;
  answer.taken.assign(picks_.size(), 0);
  if (goal == always) {
    answer.fewest = true;
    return answer;
  }
  const std::vector<bool> needed = needed_for(goal);
  const std::vector<bool> out = outdone(needed);
  Program program;
  std::vector<int> goal_columns(goals_.size(), 0), pick_columns(picks_.size(), 0);
  for (std::size_t each = always + 1; each < goals_.size(); ++each)
    if (needed[each]) goal_columns[each] = program.column(1, 0);
  const auto pick_column = [&](Pick of) {
    const auto pick = static_cast<std::size_t>(of);
    if (pick_columns[pick] == 0) {
      const OnePick& made = picks_[pick];
      pick_columns[pick] = program.column(made.most, 1 + made.dislike * least_weight);
      if (made.given != always) {
        program.row({{goal_columns[static_cast<std::size_t>(made.given)], static_cast<double>(made.most)},
                     {pick_columns[pick], -1.0}});
      }
    }
    return pick_columns[pick];
  };
  for (std::size_t each = always + 1; each < goals_.size(); ++each) {
    if (!needed[each]) continue;
    const OneGoal& made = goals_[each];
    if (made.picks.empty() && made.needed == weight_of(made.goals)) {
      // All of them: a row each says more to the solver than their sum.
      for (const auto& part : made.goals)
        program.row({{goal_columns[static_cast<std::size_t>(part.of)], 1.0}, {goal_columns[each], -1.0}});
      continue;
    }
    std::vector<std::pair<int, double>> terms{{goal_columns[each], -static_cast<double>(made.needed)}};
    for (const auto& part : made.picks) {
      if (!out[static_cast<std::size_t>(part.of)])
        terms.emplace_back(pick_column(part.of), static_cast<double>(part.weight));
    }
    for (const auto& part : made.goals)
      terms.emplace_back(goal_columns[static_cast<std::size_t>(part.of)], static_cast<double>(part.weight));
    program.row(terms);
  }
  program.must_hold(goal_columns[static_cast<std::size_t>(goal)]);
  if (program.solve(seconds, answer.fewest)) {
    for (std::size_t pick = 0; pick < picks_.size(); ++pick)
      if (pick_columns[pick] != 0) answer.taken[pick] = program.value(pick_columns[pick]);
  }
  // Nothing found in time, or numbers that rounding made wrong: begin with everything.
  if (!holds(goal, answer.taken)) {
    answer.fewest = false;
    for (std::size_t pick = 0; pick < picks_.size(); ++pick) answer.taken[pick] = picks_[pick].most;
  }
  leave_out_what_can_be(goal, answer.taken);
  return answer;
}

}  // namespace wm
