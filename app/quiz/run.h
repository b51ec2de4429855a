#pragma once
// One computer's quiz station without its screen: begins an attempt in the store, keeps it in a file, hands
// it in.
#include <QObject>
#include <QTimer>

#include "app/quiz/offer.h"
#include "app/quiz/sat_attempt.h"
#include "app/quiz/sitting_file.h"

namespace wm::app {

/// What somebody chose before the first question.
struct QuizWish {
  PersonId person;
  std::string quiz, language;
  std::string beside;  // a second language; empty: none
  std::vector<db::Help> helps;
};

class QuizRun : public QObject {
  Q_OBJECT
 public:
  /// `clock` empty: this computer's own.
  explicit QuizRun(Session& session, ReadClock clock = {}, QObject* parent = nullptr);

  /// What was being sat when the program ended goes on: `sitting` has it then. A problem where it can't
  /// (yet): another program has it, the clock is wrong (it is tried again by itself), it was damaged.
  std::optional<Problem> go_on();
  /// Whether something is kept that waits for the clock to be right.
  bool waits() const { return waiting_.has_value(); }

  Expected<void> begin(const QuizWish& wish);
  /// Null while nobody sits.
  const Sitting* sitting() const { return sitting_ ? &*sitting_ : nullptr; }
  const IssuedBank* bank() const { return bank_ ? &*bank_ : nullptr; }
  /// Changes something and keeps it, with the time that has gone by until then; nothing any more once it is
  /// over.
  template <class Change>
  void change(Change change) {
    if (!sitting_) return;
    sitting_->tick(clock_());
    if (!sitting_->over()) change(*sitting_);
    keep();
  }
  /// Ends the attempt as it stands: marked by the store, and no longer kept here. The record of its answers.
  ///
  /// There is no other end. Whoever leaves with the desk's help, and whose time is over, is marked too: the
  /// questions have been seen, and an attempt that came to nothing would be one that the rulebook's number of
  /// attempts and waiting time know nothing of (an attempt counts by when it is handed in). It takes nothing
  /// away: a later failed attempt never does. Where it should not count, because of a fire alarm, say, it is
  /// struck out as any mistake is: by a manager, with the reason.
  Expected<RecordId> hand_in();

 signals:
  /// Another second has gone by.
  void ticked();
  /// At once, and now and then while it is not handed in: a full disk may have stood in the way.
  void time_over();
  /// What is kept goes on now.
  void went_on();
  /// The answers can't be kept.
  void unkept(const wm::Problem& problem);

 private:
  void second();
  void keep();
  void forget();
  std::optional<Problem> go_on_with(const SittingState& state);
  Expected<SittingState> begun_anew(const QuizWish& wish, const PersonId& person);
  Expected<std::uint64_t> seed_for(const PersonId& person, const teach::Bank& bank) const;

  Session& session_;
  ReadClock clock_;
  SittingFile file_;
  std::optional<IssuedBank> bank_;
  std::optional<Sitting> sitting_;
  std::optional<SittingState> waiting_;
  int seconds_over_ = 0;
  QTimer seconds_;
};

}  // namespace wm::app
