#include "app/quiz/station.h"

#include <QCloseEvent>
#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/quiz/tr.h"
#include "app/words/words.h"

namespace wm::app {
namespace {
/// How long a name, or somebody's marks, stay on an own station's screen when they have gone.
constexpr int gone_ms = 3 * 60'000;
/// A page of a lesson is read longer; whoever comes after must not read on under that name.
constexpr int reading_ms = 10 * 60'000;
}  // namespace

QuizStation::QuizStation(Session& session, bool own, ReadClock clock, QWidget* parent)
    : QWidget(parent),
      session_(session),
      own_(own),
      run_(session, std::move(clock)),
      stack_(new QStackedWidget),
      who_(new WhoView(session)),
      start_(new StartView(session)),
      reading_(new LessonReader),
      questions_(new QuestionView(run_)),
      end_asked_(new HandInView),
      leave_(new LeaveView(session)),
      end_(new EndView(session)),
      wait_(station_label(27, true)),
      problem_(station_label(18, true)),
      cover_(new EmergencyCover(*this, [&session] { return session.store().emergency_call(); })) {
  setObjectName("quiz_station");
  setWindowTitle(tr("Quiz station – Witnessmark"));
  setMinimumSize(1024, 640);
  wait_->setAlignment(Qt::AlignCenter);
  wait_->setMargin(60);
  problem_->setObjectName("station_problem");
  problem_->setMargin(12);
  problem_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(stack_, 1);
  column->addWidget(problem_);
  // What is sat goes on behind it: its time runs as in every interruption, and its answers are kept.
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(12, 0, 12, 8);
  foot->addStretch(1);
  foot->addWidget(cover_->button());
  column->addLayout(foot);
  for (QWidget* view :
       std::initializer_list<QWidget*>{who_, start_, reading_, questions_, end_asked_, leave_, end_, wait_})
    stack_->addWidget(view);
  connect(who_, &WhoView::known, this, [this](const PersonId& person) { known(person); });
  connect(start_, &StartView::begin, this, &QuizStation::begin);
  connect(start_, &StartView::read, this, &QuizStation::read);
  connect(reading_, &LessonReader::read_through, this, [this] {
    if (const auto problem = enter_read()) reading_->say(problem_sentence(*problem));
  });
  connect(reading_, &LessonReader::moved, this, [this] {
    if (stack_->currentWidget() == reading_) quiet_.start(reading_ms);
  });
  connect(reading_, &LessonReader::tell_problem, this,
          [this](const Problem& problem) { reading_->say(problem_sentence(problem)); });
  connect(reading_, &LessonReader::left, this, &QuizStation::leave_lesson);
  connect(start_, &StartView::left, this, &QuizStation::done);
  connect(questions_, &QuestionView::hand_in, this, [this] {
    end_asked_->start(*run_.sitting());
    stack_->setCurrentWidget(end_asked_);
    end_asked_->setFocus();
  });
  connect(questions_, &QuestionView::leave, this, &QuizStation::ask_to_leave);
  connect(end_asked_, &HandInView::back, this, &QuizStation::show_questions);
  connect(end_asked_, &HandInView::hand_in, this, [this] { hand_in({}); });
  connect(leave_, &LeaveView::back, this, [this] { run_.sitting() ? show_questions() : done(); });
  connect(leave_, &LeaveView::allowed, this, &QuizStation::leave);
  connect(end_, &EndView::done, this, &QuizStation::done);
  connect(&run_, &QuizRun::ticked, questions_, &QuestionView::show_time);
  connect(&run_, &QuizRun::time_over, this, [this] { hand_in(tr("The time is over.")); });
  connect(&run_, &QuizRun::went_on, this, &QuizStation::show_questions);
  connect(&run_, &QuizRun::unkept, this, [this](const Problem& problem) {
    problem_->setText(problem_sentence(problem));
    problem_->show();
  });
  quiet_.setSingleShot(true);
  connect(&quiet_, &QTimer::timeout, this, [this] {
    if (own_ && !busy()) wait_for_somebody();
  });
  // The way out of a station of its own, for the desk.
  auto* out = new QShortcut(Qt::CTRL | Qt::Key_Q, this);
  connect(out, &QShortcut::activated, this, &QuizStation::ask_to_leave);
  if (!own_) return;
  reader_ = new CardReader(this);
  connect(reader_, &CardReader::scanned, this, [this](const QString& card) {
    if (stack_->currentWidget() == who_) who_->take_card(card);
  });
  wait_for_somebody();
}

bool QuizStation::take_up() {
  const auto problem = run_.go_on();
  if (run_.sitting()) {
    if (run_.sitting()->over())
      hand_in(tr("The time is over."));
    else
      show_questions();
    return true;
  }
  if (run_.waits()) {
    wait_->setText(problem_sentence(*problem));
    stack_->setCurrentWidget(wait_);
    return true;
  }
  const bool elsewhere = problem && problem->where.ends_with("quiz.json");
  if (problem && !elsewhere) refused_ = problem_sentence(*problem);
  if (problem && own_) wait_for_somebody(problem_sentence(*problem));
  return false;
}

void QuizStation::wait_for_somebody(const QString& told) {
  who_->start(told);
  stack_->setCurrentWidget(who_);
  who_->setFocus();
}

void QuizStation::open_for(const PersonId& person, const std::string& quiz) { known(person, quiz); }

void QuizStation::known(const PersonId& person, const std::string& quiz) {
  start_->show_person(person, quiz);
  stack_->setCurrentWidget(start_);
  start_->findChild<QListWidget*>("quizzes")->setFocus();
  quiet_.start(gone_ms);
}

void QuizStation::begin(const QuizWish& wish) {
  const auto begun = run_.begin(wish);
  if (!begun) return start_->show_problem(begun.error());
  quiet_.stop();
  show_questions();
}

void QuizStation::read(const PersonId& person, const LessonOffer& lesson) {
  const db::Issued& work = *lesson.text->work;
  person_ = person;
  read_.reset();
  if (lesson.not_here.isEmpty()) read_ = Lesson{person, work.name, work.revision};
  stack_->setCurrentWidget(reading_);
  quiet_.start(reading_ms);
  reading_->show_lesson(work, item_label(work.name),
                        tr("%1. Each part is read once its end was on the screen.")
                            .arg(called(session_.store().person(person))),
                        session_.store().path());
}

std::optional<Problem> QuizStation::enter_read() {
  if (!read_ || !reading_->gone_through()) return std::nullopt;
  const auto done = enter_gone_through(session_, *read_);
  if (!done) return done.error();
  read_.reset();
  reading_->say(tr("Entered: you have gone through this lesson."));
  return std::nullopt;
}

void QuizStation::leave_lesson() {
  const auto problem = enter_read();
  read_.reset();
  known(person_);
  if (problem) start_->show_problem(*problem);
}

void QuizStation::show_questions() {
  if (!run_.sitting()) return;
  if (run_.sitting()->over()) return hand_in(tr("The time is over."));
  stack_->setCurrentWidget(questions_);
  questions_->show_question();
}

void QuizStation::ask_to_leave() {
  if (!own_ && !busy()) return done();
  leave_->start(run_.sitting() != nullptr);
  stack_->setCurrentWidget(leave_);
  leave_->findChild<QLineEdit*>("leave_person")->setFocus();
}

void QuizStation::leave() {
  if (run_.sitting()) return hand_in(tr("Left with the desk's help."));
  may_close_ = true;
  emit finished();
  close();
}

void QuizStation::hand_in(const QString& why) {
  if (!run_.sitting()) return;
  large_ = run_.sitting()->state().large;
  const auto handed = run_.hand_in();
  if (!handed) {
    // It stays as it is and in its file; as long as the time was not over it can be tried again.
    end_asked_->start(*run_.sitting());
    end_asked_->show_problem(handed.error());
    stack_->setCurrentWidget(end_asked_);
    return;
  }
  problem_->hide();
  const auto sat = sat_attempt(session_, *handed);
  if (!sat) return done();
  end_->show_end(*sat, large_, why);
  stack_->setCurrentWidget(end_);
  quiet_.start(gone_ms);
}

void QuizStation::done() {
  quiet_.stop();
  if (own_) return wait_for_somebody();
  may_close_ = true;
  emit finished();
  close();
}

/// A window's own ways of closing are not the member's.
void QuizStation::closeEvent(QCloseEvent* event) {
  if (may_close_) return event->accept();
  event->ignore();
  ask_to_leave();
}

}  // namespace wm::app
