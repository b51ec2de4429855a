#pragma once
// The right side of the Desk: what somebody may do now with the machine chosen, what is missing, and the
// buttons that do what comes next.
#include <QFrame>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>

#include "app/desk/answer.h"
#include "app/desk/booking_offer.h"
#include "app/desk/need_list.h"
#include "app/desk/paper_form.h"
#include "app/desk/quiz_form.h"
#include "app/desk/session_form.h"
#include "app/desk/start_form.h"
#include "app/diary/bookings.h"
#include "app/page/page.h"
#include "app/widgets/key_button.h"
#include "app/widgets/ladder_view.h"

namespace wm::app {

class AnswerPanel : public QFrame {
  Q_OBJECT
 public:
  explicit AnswerPanel(Session& session, QWidget* parent = nullptr);
  void show_answer(const ShopNow& shop, const PersonId& person, const TargetName& target);
  /// Blanks it from curious eyes, or shows it again.
  void toggle_blank();

 signals:
  void go(const wm::app::Place& place);
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);
  /// The form was done with: the keys go back to the machines.
  void back_to_list();

 private:
  QWidget* answer_side();
  QWidget* blank_side();
  QLayout* buttons();
  KeyButton* button(const char* name, const QString& text, const QKeySequence& key,
                    void (AnswerPanel::*act)());
  void offer(const DeskAnswer& answer, const ShopNow& shop);
  QString offer_quiz(QString& next);
  void do_next();
  void book();
  void another_time();
  void wait();
  void confirm();
  /// Their place on the waiting list for what is shown.
  std::optional<WaitingLine> waits() const;
  void take_paper();
  void attest_lesson();
  void enter_quiz();
  void start_quiz();
  void open_form(PaperForm::Kind kind);
  void print();
  void toggle_presence();
  void toggle_duty();
  QString still_at_machines() const;
  void start_or_leave();
  void enter_session();
  void report(const Expected<db::Committed>& done, const QString& sentence);
  QString who() const;
  /// A quiz is taken at its station; a manager alone may enter one that was marked on paper.
  bool enters_quizzes() const { return session_.role() == db::Role::manager; }

  Session& session_;
  PersonId person_;
  TargetName target_;
  DeskAnswer answer_;
  BookingOffer offer_;
  bool present_ = false, on_duty_ = false;
  bool has_duty_ = false;  // a role to be on duty in

  QStackedWidget* stack_;
  QLabel* machine_;
  LadderView* ladder_;
  QLabel* sentence_;
  QLabel* since_;
  QLabel* now_;
  QLabel* needs_title_;
  NeedList* needs_;
  QScrollArea* scroll_;
  QLabel* next_;
  KeyButton* primary_ = nullptr;
  KeyButton *presence_ = nullptr, *waiting_ = nullptr;
  KeyButton* duty_ = nullptr;  // of whoever has a role to be on duty in
  KeyButton* start_ = nullptr;
  KeyButton* session_button_ = nullptr;  // of whoever may enter a session of the past
  KeyButton* quiz_ = nullptr;
  PaperForm* form_;
  QuizForm* quiz_form_;
  StartForm* start_form_;
  SessionForm* session_form_;
  bool at_station_ = false;  // the quiz that comes next can be taken at the station
};

}  // namespace wm::app
