#pragma once
// What answers are worth, one by one and an attempt as a whole.
#include <string>
#include <vector>

#include "core/measure/fraction.h"
#include "core/problem.h"
#include "core/teach/attempt.h"
#include "core/teach/bank.h"
#include "core/teach/paper.h"

namespace wm::teach {

/// `score` is from 0 to 1, and 1 exactly where the answer is right. In between only where the question gives
/// credit for a part: of several, ticked right ones less ticked wrong ones over all right ones, not below 0;
/// of steps, the share of pairs that stand in the right order.
struct Mark {
  bool right = false;
  Fraction score;
  friend bool operator==(const Mark&, const Mark&) = default;
};

/// What is no answer to such a question (another kind, a choice that it has not) is wrong, as no answer is.
Mark mark(const Question& question, const Given& given);

struct MarkedAnswer {
  std::size_t question = 0;  // its place in the bank
  Answer answer;
  Mark mark;
  friend bool operator==(const MarkedAnswer&, const MarkedAnswer&) = default;
};

/// `correct`, `total` and `critical_missed` as the record of a quiz has them: whole questions right.
struct Marking {
  int correct = 0, total = 0, critical_missed = 0;
  Fraction score;                     // the sum of all scores
  std::vector<MarkedAnswer> answers;  // as they were asked; those that were not reached too
  friend bool operator==(const Marking&, const Marking&) = default;
};

/// Refuses an attempt at another bank, revision or language, or that answers what its paper doesn't ask.
Expected<Marking> mark_attempt(const Bank& bank, const Attempt& attempt);

/// By the bank's own pass mark. Whether it counts for a standing the rulebook decides, by its own.
bool passes(const Bank& bank, const Marking& marking);

}  // namespace wm::teach
