#include "core/teach/question_figures.h"

#include <cmath>
#include <map>
#include <utility>

namespace wm::teach {
namespace {

/// A score over all who were asked something.
struct Scores {
  unsigned long n = 0;
  Fraction sum, squares;
  void add(const Fraction& y) {
    ++n;
    sum += y;
    squares += y * y;
  }
};

/// Pearson's coefficient of being one of `some`, whose scores add up to `sum`, with the score of all.
Figure correlation(const Scores& all, unsigned long some, const Fraction& sum) {
  if (all.n == 0) return tl::unexpected(NoFigure::nobody);
  if (all.n == 1) return tl::unexpected(NoFigure::one_person);
  const Fraction n = fraction(static_cast<long>(all.n)), x = fraction(static_cast<long>(some));
  const Fraction spread = (n * x - x * x) * (n * all.squares - all.sum * all.sum);
  if (spread == 0) return tl::unexpected(NoFigure::all_alike);
  const Fraction together = n * sum - x * all.sum;
  return together.get_d() / std::sqrt(spread.get_d());
}

/// What is added up for one question.
struct Tally {
  QuestionFigures figures;
  Scores total, rest;
  Fraction total_of_right, rest_of_right;
  std::vector<Fraction> rest_by_choice;
  bool by_itself = false;  // some paper had no other question
};

using Tallies = std::map<std::pair<std::string, int>, Tally>;

void begin(Tally& tally, const SeenAnswer& answer) {
  tally.figures.question = answer.question;
  tally.figures.topic = answer.topic;
  tally.figures.revision = answer.revision;
  for (const bool right : answer.right) tally.figures.choices.push_back({right, 0, {}});
  tally.rest_by_choice.resize(answer.right.size());
}

void add(Tally& tally, const SeenAnswer& answer, const Fraction& total, const Fraction& rest) {
  if (tally.figures.asked++ == 0) begin(tally, answer);
  tally.total.add(total);
  tally.rest.add(rest);
  for (const std::size_t choice : answer.chosen) {
    if (choice >= tally.rest_by_choice.size()) continue;
    ++tally.figures.choices[choice].chosen;
    tally.rest_by_choice[choice] += rest;
  }
  if (!answer.mark.right) return;
  ++tally.figures.right;
  tally.total_of_right += total;
  tally.rest_of_right += rest;
}

void add(Tallies& tallies, const SeenAttempt& attempt) {
  long right = 0;
  for (const SeenAnswer& answer : attempt.answers) right += answer.mark.right ? 1 : 0;
  const auto count = static_cast<long>(attempt.answers.size());
  for (const SeenAnswer& answer : attempt.answers) {
    Tally& tally = tallies[{answer.question, answer.revision}];
    const long others = right - (answer.mark.right ? 1 : 0);
    tally.by_itself = tally.by_itself || count == 1;
    add(tally, answer, fraction(right, count), count == 1 ? Fraction() : fraction(others, count - 1));
  }
}

QuestionFigures finished(Tally tally) {
  QuestionFigures figures = std::move(tally.figures);
  const auto rest = [&](std::size_t some, const Fraction& sum) -> Figure {
    if (tally.by_itself) return tl::unexpected(NoFigure::one_question);
    return correlation(tally.rest, some, sum);
  };
  figures.difficulty = static_cast<double>(figures.right) / static_cast<double>(figures.asked);
  figures.with_total = correlation(tally.total, figures.right, tally.total_of_right);
  figures.with_rest = rest(figures.right, tally.rest_of_right);
  for (std::size_t i = 0; i < figures.choices.size(); ++i)
    figures.choices[i].pull = rest(figures.choices[i].chosen, tally.rest_by_choice[i]);
  return figures;
}

}  // namespace

std::vector<QuestionFigures> question_figures(std::span<const SeenAttempt> attempts) {
  Tallies tallies;
  for (const SeenAttempt& attempt : attempts) add(tallies, attempt);
  std::vector<QuestionFigures> all;
  for (auto& [key, tally] : tallies) all.push_back(finished(std::move(tally)));
  return all;
}

}  // namespace wm::teach
