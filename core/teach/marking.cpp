#include "core/teach/marking.h"

#include <algorithm>
#include <map>

namespace wm::teach {
namespace {

Mark whole_mark(bool right) { return {right, right ? 1 : 0}; }

Mark mark_ticks(const Question& question, const SeveralRight& kind, const Ticked& given) {
  long right = 0, wrong = 0;
  for (const std::size_t choice : given.choices) {
    if (choice >= kind.right.size()) return whole_mark(false);
    ++(kind.right[choice] ? right : wrong);
  }
  const long all = std::count(kind.right.begin(), kind.right.end(), true);
  if (wrong == 0 && right == all) return whole_mark(true);
  if (!question.partial || right <= wrong) return whole_mark(false);
  return {false, fraction(right - wrong, all)};
}

bool is_an_order(std::vector<std::size_t> steps, std::size_t count) {
  std::sort(steps.begin(), steps.end());
  for (std::size_t i = 0; i < steps.size(); ++i)
    if (steps[i] != i) return false;
  return steps.size() == count;
}

Mark mark_steps(const Question& question, const Ordered& given) {
  const auto& steps = given.steps;
  if (!is_an_order(steps, choice_count(question))) return whole_mark(false);
  long pairs = 0, in_order = 0;
  for (std::size_t a = 0; a < steps.size(); ++a)
    for (std::size_t b = a + 1; b < steps.size(); ++b, ++pairs) in_order += steps[a] < steps[b] ? 1 : 0;
  if (in_order == pairs) return whole_mark(true);
  return question.partial ? Mark{false, fraction(in_order, pairs)} : whole_mark(false);
}

Mark mark_number(const ANumber& kind, const Typed& given) {
  const auto read = read_measure(given.text, kind.answer.unit);
  if (!read || !same_dimension(read->unit, kind.answer.unit)) return whole_mark(false);
  const Fraction off = abs(in_base_unit(*read) - in_base_unit(kind.answer));
  return whole_mark(off <= in_base_unit(kind.tolerance));
}

bool any_holds(const APlace& kind, Point point) {
  return std::any_of(kind.regions.begin(), kind.regions.end(),
                     [&](const Region& region) { return holds(region, point); });
}

struct Marker {
  const Question& question;
  Mark operator()(const OneRight& kind, const Chosen& given) const {
    return whole_mark(given.choice == kind.right);
  }
  Mark operator()(const SeveralRight& kind, const Ticked& given) const {
    return mark_ticks(question, kind, given);
  }
  Mark operator()(const InOrder&, const Ordered& given) const { return mark_steps(question, given); }
  Mark operator()(const ANumber& kind, const Typed& given) const { return mark_number(kind, given); }
  Mark operator()(const APlace& kind, const Pointed& given) const {
    return whole_mark(any_holds(kind, given.point));
  }
  template <class Other, class Answer>
  Mark operator()(const Other&, const Answer&) const {
    return whole_mark(false);
  }
};

Problem other(std::string what) {
  return {"attempt", std::move(what), "Mark it by the bank that it was sat with."};
}

Expected<void> fits(const Bank& bank, const Attempt& attempt) {
  if (attempt.bank != bank.name || attempt.revision != bank.revision)
    return tl::unexpected(other("It is an attempt at another bank, or another revision of it."));
  if (std::find(bank.languages.begin(), bank.languages.end(), attempt.language) == bank.languages.end())
    return tl::unexpected(other("It was sat in a language that the bank has not."));
  return {};
}

void add(Marking& marking, const Question& question, MarkedAnswer answer) {
  ++marking.total;
  marking.correct += answer.mark.right ? 1 : 0;
  marking.critical_missed += question.critical && !answer.mark.right ? 1 : 0;
  marking.score += answer.mark.score;
  marking.answers.push_back(std::move(answer));
}

}  // namespace

Mark mark(const Question& question, const Given& given) {
  return std::visit(Marker{question}, question.kind, given);
}

Expected<Marking> mark_attempt(const Bank& bank, const Attempt& attempt) {
  if (const auto fit = fits(bank, attempt); !fit) return tl::unexpected(fit.error());
  const auto paper = draw_paper(bank, attempt.seed);
  if (!paper) return tl::unexpected(paper.error());
  std::map<std::string_view, const Answer*> answers;
  for (const Answer& answer : attempt.answers) answers.emplace(answer.question, &answer);
  Marking marking;
  for (const Asked& asked : *paper) {
    const Question& question = bank.questions[asked.question];
    const auto node = answers.extract(question.id);
    const Answer answer = node.empty() ? Answer{question.id, Unanswered{}, 0} : *node.mapped();
    add(marking, question, {asked.question, answer, mark(question, answer.given)});
  }
  if (!answers.empty()) return tl::unexpected(other("It answers questions that its paper doesn't ask."));
  return marking;
}

bool passes(const Bank& bank, const Marking& marking) {
  return 100 * marking.correct >= bank.pass_percent * marking.total && marking.critical_missed == 0;
}

}  // namespace wm::teach
