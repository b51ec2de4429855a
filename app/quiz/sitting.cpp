#include "app/quiz/sitting.h"

#include <algorithm>

#include "app/quiz/tr.h"

namespace wm::app {
namespace {

/// As an attempt's file takes them (core/teach/attempt_json.cpp).
constexpr std::int64_t most_seconds = 1000000;

Problem another_bank() {
  return {"bank", QuizWords::tr("This quiz was begun with another question bank").toStdString(),
          QuizWords::tr("Begin it anew").toStdString()};
}

Problem set_back() {
  return {
      "clock", QuizWords::tr("This computer's clock shows earlier than at the last answer").toStdString(),
      QuizWords::tr("Ask the desk to put the clock right; then the quiz goes on by itself").toStdString()};
}

bool speaks(const teach::Bank& bank, const std::string& language) {
  return std::find(bank.languages.begin(), bank.languages.end(), language) != bank.languages.end();
}

/// The bank's paper for the attempt.
Expected<teach::Paper> paper_of(const teach::Bank& bank, const teach::Attempt& attempt) {
  if (bank.name != attempt.bank || bank.revision != attempt.revision || !speaks(bank, attempt.language))
    return tl::unexpected(another_bank());
  return teach::draw_paper(bank, attempt.seed);
}

bool fits(const teach::Bank& bank, const teach::Paper& paper, const SittingState& state) {
  const auto& answers = state.attempt.answers;
  return state.at < paper.size() && state.later.size() == paper.size() && answers.size() == paper.size() &&
         state.gone >= 0 && (state.beside.empty() || speaks(bank, state.beside)) &&
         std::equal(paper.begin(), paper.end(), answers.begin(),
                    [&](const teach::Asked& asked, const teach::Answer& answer) {
                      return bank.questions[asked.question].id == answer.question;
                    });
}

}  // namespace

Sitting::Sitting(teach::Bank bank, teach::Paper paper, SittingState state)
    : bank_(std::move(bank)), paper_(std::move(paper)), state_(std::move(state)) {}

Expected<Sitting> Sitting::begin(teach::Bank bank, SittingState state, const ClockReading& now) {
  auto paper = paper_of(bank, state.attempt);
  if (!paper) return tl::unexpected(paper.error());
  state.attempt.answers.clear();
  for (const teach::Asked& asked : *paper)
    state.attempt.answers.push_back({bank.questions[asked.question].id, teach::Unanswered{}, 0});
  state.later.assign(paper->size(), false);
  state.at = 0;
  state.last = now;
  if (!speaks(bank, state.beside) || state.beside == state.attempt.language) state.beside.clear();
  return Sitting(std::move(bank), std::move(*paper), std::move(state));
}

Expected<Sitting> Sitting::go_on(teach::Bank bank, SittingState state, const ClockReading& now) {
  auto paper = paper_of(bank, state.attempt);
  if (!paper) return tl::unexpected(paper.error());
  if (!fits(bank, *paper, state)) return tl::unexpected(another_bank());
  const auto away = seconds_between(state.last, now);
  if (!away) return tl::unexpected(set_back());
  Sitting sitting(std::move(bank), std::move(*paper), std::move(state));
  sitting.pass(now, *away);
  return sitting;
}

void Sitting::go_to(std::size_t i) {
  if (i < paper_.size()) state_.at = i;
}

bool Sitting::answered(std::size_t i) const {
  return !std::holds_alternative<teach::Unanswered>(state_.attempt.answers[i].given);
}

std::size_t Sitting::open_count() const {
  std::size_t open = 0;
  for (std::size_t i = 0; i < size(); ++i) open += answered(i) ? 0 : 1;
  return open;
}

std::size_t Sitting::later_count() const {
  return static_cast<std::size_t>(std::count(state_.later.begin(), state_.later.end(), true));
}

std::optional<std::size_t> Sitting::next_left() const {
  for (std::size_t step = 1; step <= size(); ++step) {
    const std::size_t i = (state_.at + step) % size();
    if (!answered(i) || later(i)) return i;
  }
  return std::nullopt;
}

void Sitting::pass(const ClockReading& now, std::int64_t seconds) {
  state_.gone += seconds;
  state_.last = now;
}

void Sitting::tick(const ClockReading& now) {
  const auto seconds = seconds_between(state_.last, now);
  // Only a system that does not say when it was started comes here with nothing: it goes on from what it
  // shows.
  pass(now, seconds.value_or(0));
  int& spent = state_.attempt.answers[state_.at].seconds;
  spent = static_cast<int>(std::min(most_seconds, spent + seconds.value_or(0)));
}

std::optional<std::int64_t> Sitting::left() const {
  if (!bank_.minutes) return std::nullopt;
  return std::max<std::int64_t>(0, std::int64_t{*bank_.minutes} * 60 - state_.gone);
}

}  // namespace wm::app
