#pragma once
// The quiz station: a whole screen for one member, who goes through a lesson or takes a quiz.
#include <QStackedWidget>
#include <QTimer>

#include "app/emergency/cover.h"
#include "app/lessons/lesson_reader.h"
#include "app/quiz/ask_views.h"
#include "app/quiz/end_view.h"
#include "app/quiz/question_view.h"
#include "app/quiz/start_view.h"
#include "app/widgets/card_reader.h"

namespace wm::app {

class QuizStation : public QWidget {
  Q_OBJECT
 public:
  /// `own`: this computer is only a station, at which members identify themselves; otherwise the desk opens
  /// it for somebody, and it closes when they are done.
  QuizStation(Session& session, bool own, ReadClock clock = {}, QWidget* parent = nullptr);

  /// Takes up what was being sat when the program ended. Whether there is something; a problem is told here.
  bool take_up();
  /// What was kept and could not be read or gone on with, in a sentence; empty: nothing.
  const QString& refused() const { return refused_; }
  /// For somebody the desk knows.
  void open_for(const PersonId& person, const std::string& quiz);
  QuizRun& run() { return run_; }

 signals:
  /// Whoever sat here is done, or left with the desk's help.
  void finished();

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  void wait_for_somebody(const QString& told = {});
  void known(const PersonId& person, const std::string& quiz = {});
  void begin(const QuizWish& wish);
  void read(const PersonId& person, const LessonOffer& lesson);
  /// Enters the lesson once it was gone through; what stands in the way, so that it can be tried again.
  std::optional<Problem> enter_read();
  void leave_lesson();
  void show_questions();
  void ask_to_leave();
  void leave();
  void hand_in(const QString& why);
  void done();
  bool busy() const { return run_.sitting() || run_.waits(); }

  Session& session_;
  const bool own_;
  bool may_close_ = false, large_ = false;
  QString refused_;
  QuizRun run_;
  QStackedWidget* stack_;
  WhoView* who_;
  StartView* start_;
  LessonReader* reading_;
  PersonId person_;             // who reads
  std::optional<Lesson> read_;  // what it will count as, not entered yet
  QuestionView* questions_;
  HandInView* end_asked_;
  LeaveView* leave_;
  EndView* end_;
  QLabel* wait_;     // while something kept waits for the clock
  QLabel* problem_;  // at the foot: what can't be kept
  QTimer quiet_;     // nobody touches it while it shows somebody's name
  CardReader* reader_ = nullptr;
  EmergencyCover* cover_;  // over whatever is shown
};

}  // namespace wm::app
