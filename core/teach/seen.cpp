#include "core/teach/seen.h"

namespace wm::teach {
namespace {

std::vector<bool> right_choices(const Question& question) {
  if (const auto* several = std::get_if<SeveralRight>(&question.kind)) return several->right;
  const auto* one = std::get_if<OneRight>(&question.kind);
  if (one == nullptr) return {};
  std::vector<bool> right(choice_count(question));
  right.at(one->right) = true;
  return right;
}

std::vector<std::size_t> chosen_in(const Given& given) {
  if (const auto* chosen = std::get_if<Chosen>(&given)) return {chosen->choice};
  if (const auto* ticked = std::get_if<Ticked>(&given)) return ticked->choices;
  return {};
}

std::map<std::string, SeenAttempt> by_topic(const SeenAttempt& attempt) {
  std::map<std::string, SeenAttempt> parts;
  for (const SeenAnswer& answer : attempt.answers) {
    SeenAttempt& part = parts[answer.topic];
    part.revision = attempt.revision;
    part.language = attempt.language;
    part.passed = attempt.passed;
    part.answers.push_back(answer);
  }
  return parts;
}

}  // namespace

SeenAttempt seen(const Bank& bank, const Attempt& attempt, const Marking& marking) {
  SeenAttempt seen{bank.revision, attempt.language, passes(bank, marking), {}};
  for (const MarkedAnswer& each : marking.answers) {
    const Question& question = bank.questions.at(each.question);
    seen.answers.push_back({question.id, question.topic, question.revision, each.mark,
                            right_choices(question), chosen_in(each.answer.given)});
  }
  return seen;
}

std::map<std::string, std::vector<SeenAttempt>> grouped(std::span<const SeenAttempt> attempts, By by) {
  std::map<std::string, std::vector<SeenAttempt>> groups;
  for (const SeenAttempt& attempt : attempts) {
    switch (by) {
      case By::everything:
        groups[""].push_back(attempt);
        break;
      case By::topic:
        for (auto& [topic, part] : by_topic(attempt)) groups[topic].push_back(std::move(part));
        break;
      case By::revision:
        groups[std::to_string(attempt.revision)].push_back(attempt);
        break;
      case By::language:
        groups[attempt.language].push_back(attempt);
        break;
    }
  }
  return groups;
}

}  // namespace wm::teach
