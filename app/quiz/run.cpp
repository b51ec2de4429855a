#include "app/quiz/run.h"

#include <QRandomGenerator>

#include "app/quiz/tr.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

constexpr int a_second = 1000, try_again = 20;

Problem cannot_begin(const QString& why) { return {"quiz", why.toStdString(), {}}; }

bool has(const std::vector<db::Help>& helps, db::Help help) {
  return std::find(helps.begin(), helps.end(), help) != helps.end();
}

}  // namespace

QuizRun::QuizRun(Session& session, ReadClock clock, QObject* parent)
    : QObject(parent),
      session_(session),
      clock_(clock ? std::move(clock) : this_computers_clock([&session] { return session.now(); })),
      file_(session.station()) {
  seconds_.setInterval(a_second);
  connect(&seconds_, &QTimer::timeout, this, &QuizRun::second);
}

std::optional<Problem> QuizRun::go_on() {
  if (sitting_) return std::nullopt;
  if (auto taken = file_.take(); !taken) return taken.error();
  const auto found = file_.read(session_.now());
  if (!found.state) {
    file_.let_go();
    return found.damaged;
  }
  return go_on_with(*found.state);
}

std::optional<Problem> QuizRun::go_on_with(const SittingState& state) {
  waiting_.reset();
  // Handed in, and the program ended before its file was gone.
  if (handed_in(session_, state.begun)) {
    forget();
    return std::nullopt;
  }
  const db::Entry* begun = session_.entry(state.begun);
  bank_ = issued_bank(session_, state.attempt.bank, state.attempt.revision);
  const auto put_aside = [&](const QString& what) {
    const QString aside = file_.put_aside(session_.now());
    forget();
    return Problem{aside.toStdString(), what.toStdString(),
                   QuizWords::tr("The file was kept. The quiz can be begun anew").toStdString()};
  };
  if (!begun || begun->voided || !bank_)
    return put_aside(QuizWords::tr("The quiz that was going on here has been struck out"));
  auto sitting = Sitting::go_on(bank_->bank, state, clock_());
  if (!sitting && sitting.error().where != "clock")
    return put_aside(QuizWords::tr("What was answered here does not fit the quiz any more"));
  seconds_.start();
  if (!sitting) {
    waiting_ = state;
    return sitting.error();
  }
  sitting_ = std::move(*sitting);
  keep();
  return std::nullopt;
}

void QuizRun::second() {
  if (waiting_) {
    const SittingState state = *waiting_;
    if (!go_on_with(state) && sitting_) emit went_on();
    return;
  }
  if (!sitting_) return;
  sitting_->tick(clock_());
  emit ticked();
  if (sitting_ && sitting_->over() && seconds_over_++ % try_again == 0) emit time_over();
}

/// A seed that nobody can foretell, from which on the first with another paper than the person's last one is
/// taken.
Expected<std::uint64_t> QuizRun::seed_for(const PersonId& person, const teach::Bank& bank) const {
  std::vector<std::string> previous;
  for (const db::Entry* entry : session_.store().of_kind("attempt_begun")) {
    const auto* begun = db::as<db::AttemptBegun>(entry->fact);
    if (begun->bank != bank.name || session_.store().joined(begun->person) != person) continue;
    const auto issued = issued_bank(session_, begun->bank, begun->revision);
    const auto paper = issued ? teach::draw_paper(issued->bank, begun->seed) : tl::unexpected(Problem{});
    if (paper) previous = teach::ids_of(issued->bank, *paper);
  }
  return teach::next_seed(bank, QRandomGenerator::system()->generate64(), previous);
}

Expected<SittingState> QuizRun::begun_anew(const QuizWish& wish, const PersonId& person) {
  bank_ = bank_in_force(session_, wish.quiz);
  if (!bank_)
    return tl::unexpected(cannot_begin(QuizWords::tr("No questions have been issued for this quiz")));
  const auto seed = seed_for(person, bank_->bank);
  if (!seed) return tl::unexpected(seed.error());
  const db::AttemptBegun begun{person, wish.quiz, bank_->bank.revision, *seed, wish.language, wish.helps};
  const auto done = session_.commit_at_station(person, db::EnterShopFact{begun});
  if (!done) return tl::unexpected(done.error());
  SittingState state;
  state.begun = done->entries.front().id;
  state.person = person;
  state.attempt = {begun.bank, begun.revision, begun.seed, begun.language, {}};
  return state;
}

Expected<void> QuizRun::begin(const QuizWish& wish) {
  if (sitting_ || waiting_)
    return tl::unexpected(cannot_begin(QuizWords::tr("Somebody else's quiz is not over at this station")));
  if (auto taken = file_.take(); !taken) return taken;
  const PersonId person = session_.store().joined(wish.person);
  const auto refuse = [this](Problem problem) {
    file_.let_go();
    return tl::unexpected(std::move(problem));
  };
  if (file_.read(session_.now()).state)
    return refuse(cannot_begin(QuizWords::tr("Somebody else's quiz is not over at this station")));
  const auto offer = quiz_offer(session_, person, wish.quiz);
  if (!offer || !offer->not_now.isEmpty())
    return refuse(cannot_begin(offer ? offer->not_now : QuizWords::tr("The rulebook asks for no such quiz")));
  Expected<SittingState> state = SittingState{};
  const ClockReading now = clock_();
  std::int64_t gone = 0;
  if (offer->begun) {
    const db::Entry& entry = *session_.entry(*offer->begun);
    const auto& begun = *db::as<db::AttemptBegun>(entry.fact);
    bank_ = issued_bank(session_, begun.bank, begun.revision);
    state->begun = entry.id;
    state->person = person;
    state->attempt = {begun.bank, begun.revision, begun.seed, begun.language, {}};
    gone = std::max<std::int64_t>(0, now.wall.seconds - entry.at.seconds);
  } else {
    state = begun_anew(wish, person);
  }
  if (!state) return refuse(state.error());
  state->beside = wish.beside;
  state->large = has(wish.helps, db::Help::large_type);
  state->gone = gone;
  auto sitting = Sitting::begin(bank_->bank, *state, now);
  if (!sitting) return refuse(sitting.error());
  sitting_ = std::move(*sitting);
  keep();
  seconds_.start();
  return {};
}

void QuizRun::keep() {
  if (const auto problem = file_.write(sitting_->state())) emit unkept(*problem);
}

void QuizRun::forget() {
  seconds_.stop();
  sitting_.reset();
  waiting_.reset();
  bank_.reset();
  seconds_over_ = 0;
  file_.drop();
  file_.let_go();
}

Expected<RecordId> QuizRun::hand_in() {
  if (!sitting_) return tl::unexpected(cannot_begin(QuizWords::tr("No quiz is being taken here")));
  change([](Sitting&) {});
  const SittingState& state = sitting_->state();
  // Where a failing disk kept it after all, it is not handed in twice.
  if (const db::Entry* done = handed_in(session_, state.begun)) {
    const RecordId id = done->id;
    forget();
    return id;
  }
  const auto done =
      session_.commit_at_station(state.person, db::HandIn{state.begun, teach::to_json(state.attempt)});
  if (!done) return tl::unexpected(done.error());
  const RecordId id = done->entries.back().id;
  forget();
  return id;
}

}  // namespace wm::app
