#include "core/teach/bank.h"

#include <algorithm>

namespace wm::teach {

std::size_t choice_count(const Question& question) {
  return question.wordings.empty() ? 0 : question.wordings.front().choices.size();
}

std::size_t questions_a_paper(const Bank& bank) {
  std::size_t count = 0;
  for (const Draw& draw : bank.draws) count += static_cast<std::size_t>(draw.count);
  return count;
}

const Question* question_of(const Bank& bank, std::string_view id) {
  const auto at = std::find_if(bank.questions.begin(), bank.questions.end(),
                               [&](const Question& q) { return q.id == id; });
  return at == bank.questions.end() ? nullptr : &*at;
}

const Wording* wording_of(const Question& question, std::string_view language) {
  const auto at = std::find_if(question.wordings.begin(), question.wordings.end(),
                               [&](const Wording& w) { return w.language == language; });
  return at == question.wordings.end() ? nullptr : &*at;
}

}  // namespace wm::teach
