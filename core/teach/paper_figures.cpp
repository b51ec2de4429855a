#include "core/teach/paper_figures.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace wm::teach {
namespace {

/// Sums over attempts; the squares of deviations from the mean add up to `squares` - `sum`² / n.
struct Sums {
  Fraction sum, squares;
  void add(const Fraction& x) {
    sum += x;
    squares += x * x;
  }
  /// n² times the variance over n.
  Fraction spread(std::size_t n) const { return static_cast<unsigned long>(n) * squares - sum * sum; }
};

using Key = std::pair<std::string_view, int>;
/// By question and revision: the score of a paper's questions, in the same order for the same questions.
std::map<Key, const Mark*> marks_of(const SeenAttempt& attempt) {
  std::map<Key, const Mark*> marks;
  for (const SeenAnswer& answer : attempt.answers) marks[{answer.question, answer.revision}] = &answer.mark;
  return marks;
}

/// What the attempts add up to. By question only as long as all were asked the same.
struct Table {
  std::size_t people = 0, questions = 0;
  bool same_questions = true, same_length = true;
  Sums right, score;
  std::map<Key, std::pair<Sums, Sums>> by_question;  // right or not, score

  explicit Table(std::span<const SeenAttempt> attempts) {
    for (const SeenAttempt& attempt : attempts) add(attempt);
  }
  void add(const SeenAttempt& attempt) {
    const auto marks = marks_of(attempt);
    if (people++ == 0) questions = marks.size();
    same_length = same_length && marks.size() == questions;
    Fraction count, sum;
    for (const auto& [key, mark] : marks) {
      count += mark->right ? 1 : 0;
      sum += mark->score;
      auto& [right_sums, score_sums] = by_question[key];
      right_sums.add(mark->right ? 1 : 0);
      score_sums.add(mark->score);
    }
    same_questions = same_questions && same_length && by_question.size() == questions;
    right.add(count);
    score.add(sum);
  }
};

Figure none(NoFigure why) { return tl::unexpected(why); }

/// Why no reliability can be worked out of scores that spread so, if it can't.
std::optional<NoFigure> missing(const Table& table, const Sums& total) {
  if (table.people == 0) return NoFigure::nobody;
  if (table.people == 1) return NoFigure::one_person;
  if (!table.same_length) return NoFigure::other_lengths;
  if (table.questions < 2) return NoFigure::one_question;
  if (total.spread(table.people) == 0) return NoFigure::all_alike;
  return std::nullopt;
}

/// k / (k - 1) * (1 - the questions' variances / the total's): formula (20) of 1937 and alpha of 1951 are
/// this, since a variance of noughts and ones is p * q.
Figure consistency(const Table& table, const Sums& total, Sums std::pair<Sums, Sums>::*part) {
  if (const auto why = missing(table, total)) return none(*why);
  if (!table.same_questions) return none(NoFigure::other_questions);
  Fraction questions;
  for (const auto& [key, sums] : table.by_question) questions += (sums.*part).spread(table.people);
  const Fraction ratio = questions / total.spread(table.people);
  const Fraction result =
      (1 - ratio) * fraction(static_cast<long>(table.questions), static_cast<long>(table.questions) - 1);
  return result.get_d();
}

/// k / (k - 1) * (1 - M (k - M) / (k s²)), formula (21) of 1937.
Figure kr21(const Table& table) {
  if (const auto why = missing(table, table.right)) return none(*why);
  const Fraction n = fraction(static_cast<long>(table.people)),
                 k = fraction(static_cast<long>(table.questions));
  const Fraction mean = table.right.sum / n, variance = table.right.spread(table.people) / (n * n);
  const Fraction result = k / (k - 1) * (1 - mean * (k - mean) / (k * variance));
  return result.get_d();
}

Figure deviation(const Table& table) {
  if (table.people < 2) return none(table.people == 0 ? NoFigure::nobody : NoFigure::one_person);
  const auto n = static_cast<long>(table.people);
  const Fraction variance = table.right.spread(table.people) * fraction(1, n) * fraction(1, n - 1);
  return std::sqrt(variance.get_d());
}

Figure mean(const Table& table) {
  if (table.people == 0) return none(NoFigure::nobody);
  const Fraction mean = table.right.sum * fraction(1, static_cast<long>(table.people));
  return mean.get_d();
}

}  // namespace

PaperFigures paper_figures(std::span<const SeenAttempt> attempts) {
  const Table table(attempts);
  PaperFigures figures;
  figures.people = attempts.size();
  figures.passed = static_cast<std::size_t>(
      std::count_if(attempts.begin(), attempts.end(), [](const SeenAttempt& a) { return a.passed; }));
  figures.passing = stats::wilson(figures.passed, figures.people);
  figures.mean = mean(table);
  figures.deviation = deviation(table);
  figures.kr20 = consistency(table, table.right, &std::pair<Sums, Sums>::first);
  figures.kr21 = kr21(table);
  figures.alpha = consistency(table, table.score, &std::pair<Sums, Sums>::second);
  const bool drawn = !figures.kr20 && figures.kr20.error() == NoFigure::other_questions;
  figures.standard_error = (drawn ? figures.kr21 : figures.kr20).map([&](double reliability) {
    return *figures.deviation * std::sqrt(1 - reliability);
  });
  return figures;
}

}  // namespace wm::teach
