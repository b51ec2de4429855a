#include "db/demo_quizzes.h"

#include <QByteArray>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "core/teach/attempt.h"
#include "core/teach/bank_text.h"

namespace wm::db {
namespace {

void add(import::ImportPlan& plan, Command command, int line) {
  plan.commands.push_back(std::move(command));
  plan.lines.push_back(line);
}

tl::unexpected<Problem> wrong_line(std::size_t line, const std::string& what) {
  return tl::unexpected(
      Problem{"attempts.jsonl, line " + std::to_string(line), what, "Run resources/demo/sat.py once more"});
}

/// The lines of a file, one attempt each.
class Attempts {
 public:
  explicit Attempts(const std::string& lines) : lines_(lines) {}

  /// The next one, which must be at this quiz.
  Expected<teach::Attempt> next(const Quiz& quiz, const import::Ground& ground) {
    std::string line;
    ++number_;
    if (!std::getline(lines_, line)) return wrong_line(number_, "There is no attempt for this quiz");
    const auto json = nlohmann::json::parse(line);
    auto attempt = teach::read_attempt(json.at("attempt").dump());
    if (!attempt) return wrong_line(number_, attempt.error().front().what);
    if (ground.person_numbered(json.at("number").get<std::string>()) != quiz.person ||
        attempt->bank != quiz.quiz || attempt->revision != quiz.revision)
      return wrong_line(number_, "This is an attempt at another quiz");
    return std::move(*attempt);
  }
  bool at_end() { return (lines_ >> std::ws).eof(); }

 private:
  std::istringstream lines_;
  std::size_t number_ = 0;
};

/// Handed in under the quiz's own id, so that what refers to the quiz still does.
void sit(import::ImportPlan& plan, Command quiz, const PersonId& person, const teach::Attempt& attempt,
         int line) {
  std::int64_t seconds = 0;
  for (const teach::Answer& answer : attempt.answers) seconds += answer.seconds;
  Command begun = quiz;
  begun.id += "-begun";
  begun.at = *quiz.at - seconds;
  begun.note.clear();
  begun.action =
      EnterShopFact{AttemptBegun{person, attempt.bank, attempt.revision, attempt.seed, attempt.language, {}}};
  quiz.action = HandIn{begun.id, teach::to_json(attempt)};
  add(plan, std::move(begun), line);
  add(plan, std::move(quiz), line);
}

}  // namespace

std::vector<Enclosure> pictures_of(const std::string& text, CarriedPicture carried) {
  std::set<std::string> names;
  if (const auto bank = teach::read_bank(text))
    for (const teach::Question& question : bank->questions)
      if (!question.picture.empty()) names.insert(question.picture);
  std::vector<Enclosure> pictures;
  for (const std::string& name : names)
    pictures.push_back({name, QByteArray::fromStdString(carried(name)).toBase64().toStdString()});
  return pictures;
}

Expected<void> sit_quizzes(import::ImportPlan& history, const std::string& lines,
                           const import::Ground& ground) {
  Attempts attempts(lines);
  import::ImportPlan sat;
  for (std::size_t i = 0; i < history.commands.size(); ++i) {
    Command& command = history.commands[i];
    const auto* entered = std::get_if<EnterFact>(&command.action);
    const auto* quiz = entered ? std::get_if<Quiz>(&entered->fact) : nullptr;
    if (quiz == nullptr) {
      add(sat, std::move(command), history.lines[i]);
      continue;
    }
    const auto attempt = attempts.next(*quiz, ground);
    if (!attempt) return tl::unexpected(attempt.error());
    const PersonId person = quiz->person;
    sit(sat, std::move(command), person, *attempt, history.lines[i]);
  }
  if (!attempts.at_end()) return wrong_line(0, "There are more attempts than quizzes");
  history.commands = std::move(sat.commands);
  history.lines = std::move(sat.lines);
  return {};
}

}  // namespace wm::db
