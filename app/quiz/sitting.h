#pragma once
// One person at one paper, from the first question to the last: what a screen shows and a file keeps. No
// widget, no store, no clock of its own.
#include <cstdint>
#include <string>
#include <vector>

#include "app/quiz/time_gone.h"
#include "core/records/record.h"
#include "core/teach/attempt.h"
#include "core/teach/bank.h"
#include "core/teach/paper.h"

namespace wm::app {

/// All that is needed to go on after the program has ended, whyever.
struct SittingState {
  RecordId begun;  // the record that the attempt was begun with
  PersonId person;
  teach::Attempt attempt;   // an answer for each question, in the paper's order
  std::string beside;       // a second language shown beside the first; empty: none
  bool large = false;       // larger type
  std::vector<bool> later;  // "come back to this one", by question
  std::size_t at = 0;       // which question is shown
  std::int64_t gone = 0;    // seconds since it was begun
  ClockReading last;        // when `gone` was so many
  friend bool operator==(const SittingState&, const SittingState&) = default;
};

class Sitting {
 public:
  /// The attempt's bank, revision, seed and language say which paper; of `state`, `begun`, `person`,
  /// `beside`, `large` and `gone` are taken over. Refuses a bank that can't fill its blueprint, and one that
  /// is another or has not that language.
  static Expected<Sitting> begin(teach::Bank bank, SittingState state, const ClockReading& now);
  /// Goes on with what was kept; the time since then is gone. Refuses what does not fit the bank, and a clock
  /// that shows earlier than it did.
  static Expected<Sitting> go_on(teach::Bank bank, SittingState state, const ClockReading& now);

  const SittingState& state() const { return state_; }
  const teach::Bank& bank() const { return bank_; }
  const teach::Paper& paper() const { return paper_; }
  std::size_t size() const { return paper_.size(); }
  std::size_t at() const { return state_.at; }
  const teach::Asked& asked() const { return paper_[state_.at]; }
  const teach::Question& question() const { return question(state_.at); }
  const teach::Question& question(std::size_t i) const { return bank_.questions[paper_[i].question]; }
  const teach::Given& given() const { return state_.attempt.answers[state_.at].given; }

  /// Another question; beyond the ends nothing happens.
  void go_to(std::size_t i);
  void next() { go_to(state_.at + 1); }
  void back() {
    if (state_.at > 0) go_to(state_.at - 1);
  }
  void answer(teach::Given given) { state_.attempt.answers[state_.at].given = std::move(given); }
  void toggle_later() { state_.later[state_.at] = !state_.later[state_.at]; }
  void set_beside(std::string language) { state_.beside = std::move(language); }
  void set_large(bool large) { state_.large = large; }

  bool answered(std::size_t i) const;
  bool later(std::size_t i) const { return state_.later[i]; }
  std::size_t open_count() const;
  std::size_t later_count() const;
  /// The next question, round from this one, that is open or to be come back to; nothing where there is none.
  std::optional<std::size_t> next_left() const;

  /// The time since the last tick is gone; it was spent on the question shown.
  void tick(const ClockReading& now);
  /// Seconds; nothing where there is no limit; not below 0.
  std::optional<std::int64_t> left() const;
  bool over() const { return left() == 0; }

 private:
  Sitting(teach::Bank bank, teach::Paper paper, SittingState state);
  void pass(const ClockReading& now, std::int64_t seconds);

  teach::Bank bank_;
  teach::Paper paper_;
  SittingState state_;
};

}  // namespace wm::app
