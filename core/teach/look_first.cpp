#include "core/teach/look_first.h"

#include <algorithm>
#include <cmath>

#include "core/figures/interval.h"

namespace wm::teach {
namespace {

/// How many deviations of chance a correlation lies above 0.
double beyond_chance(double correlation, std::size_t pairs) {
  return correlation * std::sqrt(static_cast<double>(pairs) - 1);
}

/// One right choice of so many: the others are guesses' odds.
bool below_guessing(const QuestionFigures& q, const Strictness& strictness) {
  const auto right = std::count_if(q.choices.begin(), q.choices.end(), [](const auto& c) { return c.right; });
  const auto interval = stats::wilson(q.right, q.asked, strictness.beyond);
  return right == 1 && interval && interval->high < 1.0 / static_cast<double>(q.choices.size());
}

void doubt_choices(const QuestionFigures& q, const Strictness& strictness, std::vector<Reason>& reasons) {
  for (std::size_t i = 0; i < q.choices.size(); ++i) {
    const ChoiceFigures& choice = q.choices[i];
    if (choice.right) continue;
    if (choice.chosen == 0)
      reasons.push_back({Doubt::never_chosen, i, 0});
    else if (choice.pull && beyond_chance(*choice.pull, q.asked) > strictness.beyond)
      reasons.push_back({Doubt::strong_choose_wrong, i, *choice.pull});
  }
}

std::vector<Reason> reasons_of(const QuestionFigures& q, const Strictness& strictness) {
  std::vector<Reason> reasons;
  if (q.asked < strictness.least) return reasons;
  const bool known = q.with_rest.has_value();
  if (known && beyond_chance(*q.with_rest, q.asked) < -strictness.beyond)
    reasons.push_back({Doubt::strong_miss_it, {}, *q.with_rest});
  else if (known && *q.with_rest < strictness.weak && *q.difficulty < strictness.easy)
    reasons.push_back({Doubt::tells_nothing, {}, *q.with_rest});
  if (below_guessing(q, strictness)) reasons.push_back({Doubt::below_guessing, {}, *q.difficulty});
  doubt_choices(q, strictness, reasons);
  std::stable_sort(reasons.begin(), reasons.end(),
                   [](const Reason& a, const Reason& b) { return a.doubt < b.doubt; });
  return reasons;
}

/// How bad the first reason is among its like.
double badness(const LookAt& at) {
  const Reason& first = at.reasons.front();
  switch (first.doubt) {
    case Doubt::strong_miss_it:
      return -beyond_chance(first.figure, at.figures.asked);
    case Doubt::strong_choose_wrong:
      return beyond_chance(first.figure, at.figures.asked);
    case Doubt::below_guessing:
    case Doubt::tells_nothing:
      return -first.figure;
    case Doubt::never_chosen:
      return static_cast<double>(at.figures.asked);
  }
  return 0;
}

}  // namespace

bool worse(const LookAt& one, const LookAt& other) {
  const Doubt x = one.reasons.front().doubt, y = other.reasons.front().doubt;
  return x != y ? x < y : badness(one) > badness(other);
}

std::vector<LookAt> look_first(std::span<const QuestionFigures> questions, const Strictness& strictness) {
  std::vector<LookAt> all;
  for (const QuestionFigures& question : questions)
    if (auto reasons = reasons_of(question, strictness); !reasons.empty())
      all.push_back({question, std::move(reasons)});
  std::stable_sort(all.begin(), all.end(), worse);
  return all;
}

}  // namespace wm::teach
