#include "core/match/program.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>

namespace wm::match {
namespace {

/// What a solver's sum may be off by rounding; sums are whole numbers.
constexpr double slack = 1e-5;
/// So many steps of the simplex method between two looks at whether to go on.
constexpr int steps_at_once = 200;

double sum_of(std::span<const Term> terms, const Values& values) {
  double sum = 0;
  for (const Term& each : terms) sum += each.weight * values[static_cast<std::size_t>(each.column)];
  return sum;
}

}  // namespace

struct Program::Data {
  glp_prob* problem = glp_create_prob();
  Data() {
    glp_term_out(GLP_OFF);
    glp_set_obj_dir(problem, GLP_MAX);
  }
  ~Data() { glp_delete_prob(problem); }
  Data(const Data&) = delete;
  Data& operator=(const Data&) = delete;

  void row(std::span<const Term> terms, int kind, double least, double most) {
    const int row = glp_add_rows(problem, 1);
    glp_set_row_bnds(problem, row, kind, least, most);
    std::vector<int> columns{0};
    std::vector<double> weights{0};
    for (const Term& each : terms) {
      columns.push_back(each.column + 1);
      weights.push_back(each.weight);
    }
    glp_set_mat_row(problem, row, static_cast<int>(terms.size()), columns.data(), weights.data());
  }

  /// Solves without asking for whole numbers. False where it was stopped or did not succeed.
  bool relax(const std::function<bool()>& go_on) {
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.it_lim = steps_at_once;
    while (true) {
      const int error = glp_simplex(problem, &how);
      if (error == 0) return glp_get_status(problem) == GLP_OPT;
      if (error != GLP_EITLIM || !go_on()) return false;
    }
  }
};

namespace {

/// What the branching looks after: better answers from relaxed ones, and when to stop.
struct Branching {
  const Program::Search& search;
  std::span<const Term> sum;
  Values values;
  double best;
  double bound;
  bool better = false;
  bool stopped = false;
  int nodes = 0;

  bool take(const std::optional<Values>& other) {
    if (!other || sum_of(sum, *other) < best + 1 - slack) return false;
    best = sum_of(sum, *other);
    values = *other;
    return better = true;
  }
  bool settled() const { return std::floor(bound + slack) <= best + slack; }
};

void round_relaxed(glp_tree* tree, Branching& state) {
  glp_prob* problem = glp_ios_get_prob(tree);
  Values relaxed(static_cast<std::size_t>(glp_get_num_cols(problem)));
  for (std::size_t i = 0; i < relaxed.size(); ++i)
    relaxed[i] = glp_get_col_prim(problem, static_cast<int>(i) + 1);
  if (!state.take(state.search.round(relaxed)) && state.nodes > 1) return;
  Values shifted{0};
  shifted.insert(shifted.end(), state.values.begin(), state.values.end());
  glp_ios_heur_sol(tree, shifted.data());
}

void take_found(glp_tree* tree, Branching& state) {
  glp_prob* problem = glp_ios_get_prob(tree);
  Values found(static_cast<std::size_t>(glp_get_num_cols(problem)));
  for (std::size_t i = 0; i < found.size(); ++i) found[i] = glp_mip_col_val(problem, static_cast<int>(i) + 1);
  state.take(found);
}

void branching(glp_tree* tree, void* info) {
  Branching& state = *static_cast<Branching*>(info);
  const int node = glp_ios_best_node(tree);
  // Before a node is solved its own bound is not finite.
  if (node != 0) state.bound = std::min(state.bound, glp_ios_node_bound(tree, node));
  switch (glp_ios_reason(tree)) {
    case GLP_IHEUR:
      if (state.nodes++ % 10 == 0) round_relaxed(tree, state);
      break;
    case GLP_IBINGO:
      take_found(tree, state);
      break;
    default:
      break;
  }
  state.stopped = state.stopped || !state.search.go_on();
  if (state.stopped || (node != 0 && state.settled())) glp_ios_terminate(tree);
}

}  // namespace

Program::Program() : data_(std::make_unique<Data>()) {}
Program::~Program() = default;

int Program::columns() const { return glp_get_num_cols(data_->problem); }

int Program::column(double least, double most, bool whole) {
  const int column = glp_add_cols(data_->problem, 1);
  glp_set_col_kind(data_->problem, column, whole ? GLP_IV : GLP_CV);
  glp_set_col_bnds(data_->problem, column, least < most ? GLP_DB : GLP_FX, least, most);
  return column - 1;
}

void Program::row_at_most(std::span<const Term> terms, double most) { data_->row(terms, GLP_UP, 0, most); }
void Program::row_at_least(std::span<const Term> terms, double least) { data_->row(terms, GLP_LO, least, 0); }

Program::Found Program::most(std::span<const Term> sum, const Values& begin, const Search& search) {
  glp_prob* problem = data_->problem;
  for (int i = 1; i <= columns(); ++i) glp_set_obj_coef(problem, i, 0);
  for (const Term& each : sum) glp_set_obj_coef(problem, each.column + 1, each.weight);
  if (!data_->relax(search.go_on)) return {};

  Branching state{search, sum, begin, sum_of(sum, begin), glp_get_obj_val(problem)};
  const auto found = [&] {
    return Found{state.better ? std::optional(state.values) : std::nullopt, std::floor(state.bound + slack)};
  };
  Values relaxed(static_cast<std::size_t>(columns()));
  for (int i = 0; i < columns(); ++i) relaxed[static_cast<std::size_t>(i)] = glp_get_col_prim(problem, i + 1);
  if (!state.settled()) state.take(search.round(relaxed));
  if (state.settled()) return found();

  glp_iocp how;
  glp_init_iocp(&how);
  how.msg_lev = GLP_MSG_OFF;
  how.mir_cuts = how.gmi_cuts = how.cov_cuts = search.cuts ? GLP_ON : GLP_OFF;
  how.cb_func = branching;
  how.cb_info = &state;
  const int error = glp_intopt(problem, &how);
  // Gone through to the end: nothing is better than the best that was met.
  if (error == 0 && !state.stopped) state.bound = state.best;
  return found();
}

}  // namespace wm::match
