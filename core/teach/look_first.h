#pragma once
// Which questions a person should look at first, and why.
#include <optional>
#include <span>
#include <vector>

#include "core/teach/question_figures.h"

namespace wm::teach {

/// The worst first.
enum class Doubt {
  strong_miss_it,       // the strong get it wrong more than the weak
  strong_choose_wrong,  // the strong choose a wrong choice more than the weak
  below_guessing,       // fewer have it right than would by guessing
  tells_nothing,        // strong and weak have it right about alike
  never_chosen          // nobody chose a wrong choice
};

/// `figure`: the correlation for the first two and the fourth; the share right for the third; 0 for the last.
struct Reason {
  Doubt doubt = Doubt::strong_miss_it;
  std::optional<std::size_t> choice;
  double figure = 0;
  friend bool operator==(const Reason&, const Reason&) = default;
};

struct LookAt {
  QuestionFigures figures;
  std::vector<Reason> reasons;  // one or more, the worst first
  friend bool operator==(const LookAt&, const LookAt&) = default;
};

/// What it takes to doubt a question. A correlation r of n pairs that has nothing behind it is about normal
/// with the deviation 1 / sqrt(n - 1), so that r * sqrt(n - 1) beyond `beyond` comes by chance once in twenty
/// questions.
struct Strictness {
  std::size_t least = 30;  // answers, for any doubt at all
  double beyond = 1.645;   // common practice, no source, as are the next two
  double weak = 0.10;      // a correlation below this tells nothing
  double easy = 0.95;      // a question that more have right than this can't tell much, and need not
};

/// Whether one is to be looked at before the other: by the first reason, then by how far its figure is beyond
/// chance.
bool worse(const LookAt& one, const LookAt& other);

/// The worst first.
std::vector<LookAt> look_first(std::span<const QuestionFigures> questions, const Strictness& strictness = {});

}  // namespace wm::teach
