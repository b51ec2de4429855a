// Makes random quizzes and prints them with the figures that core/teach works out of them, a word a field:
//   quiz PEOPLE QUESTIONS
//   person RIGHT… SCORE… CHOICE…     for each; 0 or 1, a score from 0 to 1, the choice of four that was
//   chosen paper NAME VALUE                 NA where there is no figure question I NAME VALUE pull I CHOICE
//   VALUE passed COUNT OF LOW HIGH
#include <cstdio>
#include <cstdlib>
#include <random>

#include "core/teach/paper_figures.h"
#include "core/teach/question_figures.h"

namespace {

using namespace wm;
using namespace wm::teach;
using Dice = std::mt19937_64;

int whole(Dice& dice, int low, int high) {
  return low + static_cast<int>(dice() % static_cast<unsigned>(high - low + 1));
}

SeenAnswer answer(Dice& dice, int question, int ability) {
  SeenAnswer a;
  a.question = "q" + std::to_string(100 + question);
  const bool right = whole(dice, 0, 100) + ability > 20 + 5 * (question % 10);
  const bool partial = question % 3 == 0;
  a.mark = {right, right ? Fraction(1) : partial ? fraction(whole(dice, 0, 4), 5) : Fraction(0)};
  a.right = {true, false, false, false};
  a.chosen = {right ? 0u : static_cast<std::size_t>(whole(dice, 1, 3))};
  return a;
}

std::vector<SeenAttempt> quiz(Dice& dice, int people, int questions) {
  std::vector<SeenAttempt> all;
  for (int p = 0; p < people; ++p) {
    const int ability = whole(dice, 0, 60);
    SeenAttempt attempt;
    attempt.passed = whole(dice, 0, 2) > 0;
    for (int q = 0; q < questions; ++q) attempt.answers.push_back(answer(dice, q, ability));
    all.push_back(std::move(attempt));
  }
  return all;
}

void value(const Figure& figure) {
  if (figure)
    std::printf(" %.17g\n", *figure);
  else
    std::printf(" NA\n");
}

void paper(const std::vector<SeenAttempt>& attempts) {
  const PaperFigures f = paper_figures(attempts);
  const std::pair<const char*, Figure> figures[] = {{"mean", f.mean},   {"deviation", f.deviation},
                                                    {"kr20", f.kr20},   {"kr21", f.kr21},
                                                    {"alpha", f.alpha}, {"error", f.standard_error}};
  for (const auto& [name, figure] : figures) {
    std::printf("paper %s", name);
    value(figure);
  }
  std::printf("passed %zu %zu %.17g %.17g\n", f.passed, f.people, f.passing->low, f.passing->high);
}

void questions(const std::vector<SeenAttempt>& attempts) {
  int number = 0;
  for (const QuestionFigures& q : question_figures(attempts)) {
    ++number;
    const std::pair<const char*, Figure> figures[] = {
        {"difficulty", q.difficulty}, {"total", q.with_total}, {"rest", q.with_rest}};
    for (const auto& [name, figure] : figures) {
      std::printf("question %d %s", number, name);
      value(figure);
    }
    for (std::size_t i = 0; i < q.choices.size(); ++i) {
      std::printf("pull %d %zu", number, i);
      value(q.choices[i].pull);
    }
  }
}

void print(const std::vector<SeenAttempt>& attempts) {
  std::printf("quiz %zu %zu\n", attempts.size(), attempts.front().answers.size());
  for (const SeenAttempt& attempt : attempts) {
    std::printf("person");
    for (const SeenAnswer& a : attempt.answers) std::printf(" %d", a.mark.right ? 1 : 0);
    for (const SeenAnswer& a : attempt.answers) std::printf(" %.17g", a.mark.score.get_d());
    for (const SeenAnswer& a : attempt.answers) std::printf(" %zu", a.chosen.front());
    std::printf("\n");
  }
  paper(attempts);
  questions(attempts);
}

}  // namespace

int main(int count, char** words) {
  Dice dice(count > 1 ? std::strtoull(words[1], nullptr, 10) : 1);
  for (int quizzes = count > 2 ? std::atoi(words[2]) : 200; quizzes > 0; --quizzes)
    print(quiz(dice, whole(dice, 1, whole(dice, 0, 1) ? 6 : 60), whole(dice, 1, 25)));
}
