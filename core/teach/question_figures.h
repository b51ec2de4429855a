#pragma once
// What the answers to a question say about the question.
#include <span>
#include <string>
#include <vector>

#include "core/teach/figure.h"
#include "core/teach/seen.h"

namespace wm::teach {

/// `pull`: the correlation of choosing it with the score on the rest of the paper. Above 0 the strong choose
/// it more than the weak do, as they should a right choice.
struct ChoiceFigures {
  bool right = false;
  std::size_t chosen = 0;
  Figure pull;
  friend bool operator==(const ChoiceFigures&, const ChoiceFigures&) = default;
};

/// Difficulty is the share that had it right.
/// With the total: the point-biserial correlation of right or wrong with the share right of the whole paper
/// (for papers of one length, with the score), which is Pearson's coefficient where one variable is 0 or 1.
/// With the rest: the same without the question itself, which would be in both: S. Henrysson, Correction of
/// item-total correlations in item analysis, Psychometrika 28:211-218 (1963).
struct QuestionFigures {
  std::string question, topic;
  int revision = 1;
  std::size_t asked = 0, right = 0;
  Figure difficulty, with_total, with_rest;
  std::vector<ChoiceFigures> choices;  // for the kinds that have right ones
  friend bool operator==(const QuestionFigures&, const QuestionFigures&) = default;
};

/// For each question, and each of its revisions by itself; in order of id and revision.
std::vector<QuestionFigures> question_figures(std::span<const SeenAttempt> attempts);

}  // namespace wm::teach
