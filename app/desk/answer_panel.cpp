#include "app/desk/answer_panel.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/print_missing.h"
#include "app/quiz/offer.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QLabel* wrapped(const char* role = nullptr) {
  auto* label = new QLabel;
  label->setWordWrap(true);
  if (role) label->setProperty("role", role);
  return label;
}

}  // namespace

AnswerPanel::AnswerPanel(Session& session, QWidget* parent)
    : QFrame(parent),
      session_(session),
      stack_(new QStackedWidget),
      machine_(wrapped("heading")),
      ladder_(new LadderView),
      sentence_(wrapped("large")),
      since_(wrapped("quiet")),
      now_(wrapped()),
      needs_title_(wrapped("heading")),
      needs_(new NeedList),
      scroll_(new QScrollArea),
      next_(wrapped()),
      form_(new PaperForm(session)),
      quiz_form_(new QuizForm(session)),
      start_form_(new StartForm(session)),
      session_form_(new SessionForm(session)) {
  setProperty("role", "paper");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(stack_);
  stack_->addWidget(answer_side());
  stack_->addWidget(blank_side());
  stack_->addWidget(form_);
  stack_->addWidget(quiz_form_);
  stack_->addWidget(start_form_);
  stack_->addWidget(session_form_);
  sentence_->setObjectName("answer");
  since_->setObjectName("answer_since");
  now_->setObjectName("answer_now");
  next_->setObjectName("next_step");
  const auto back = [this] {
    stack_->setCurrentIndex(0);
    emit back_to_list();
  };
  connect(form_, &PaperForm::closed, this, back);
  connect(quiz_form_, &QuizForm::closed, this, back);
  connect(start_form_, &StartForm::closed, this, back);
  connect(session_form_, &SessionForm::closed, this, back);
  connect(session_form_, &SessionForm::tell, this, &AnswerPanel::tell);
  connect(start_form_, &StartForm::tell, this, &AnswerPanel::tell);
  connect(quiz_form_, &QuizForm::go, this, &AnswerPanel::go);
  connect(quiz_form_, &QuizForm::tell, this, &AnswerPanel::tell);
  connect(form_, &PaperForm::tell, this, &AnswerPanel::tell);
  connect(form_, &PaperForm::tell_problem, this, &AnswerPanel::tell_problem);
}

QWidget* AnswerPanel::answer_side() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(20, 14, 20, 12);
  column->setSpacing(6);
  auto* head = new QHBoxLayout;
  head->addWidget(machine_, 1);
  head->addWidget(ladder_);
  column->addLayout(head);
  column->addWidget(sentence_);
  column->addWidget(since_);
  column->addWidget(now_);
  column->addSpacing(4);
  column->addWidget(needs_title_);
  scroll_->setWidget(needs_);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->viewport()->setAutoFillBackground(false);
  needs_->setAutoFillBackground(false);
  column->addWidget(scroll_, 1);
  column->addWidget(next_);
  column->addLayout(buttons());
  auto* small = wrapped("quiet");
  small->setText(caution());
  column->addWidget(small);
  return side;
}

QWidget* AnswerPanel::blank_side() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(20, 18, 20, 18);
  auto* show = new KeyButton(tr("Show the answer"), Qt::CTRL | Qt::Key_B);
  connect(show, &KeyButton::clicked, this, &AnswerPanel::toggle_blank);
  column->addStretch(1);
  column->addWidget(show);
  return side;
}

KeyButton* AnswerPanel::button(const char* name, const QString& text, const QKeySequence& key,
                               void (AnswerPanel::*act)()) {
  auto* made = new KeyButton(text, key);
  made->setObjectName(name);
  connect(made, &KeyButton::clicked, this, act);
  return made;
}

QLayout* AnswerPanel::buttons() {
  auto* grid = new QGridLayout;
  grid->setSpacing(6);
  primary_ = new KeyButton({}, Qt::CTRL | Qt::Key_Return, true);
  primary_->setObjectName("do_next");
  connect(primary_, &KeyButton::clicked, this, &AnswerPanel::do_next);
  grid->addWidget(primary_, 0, 0, 1, 2);
  grid->addWidget(
      button("another_time", tr("Another time…"), Qt::CTRL | Qt::Key_T, &AnswerPanel::another_time), 1, 0);
  waiting_ = button("waiting", tr("Waiting list"), Qt::CTRL | Qt::Key_L, &AnswerPanel::wait);
  grid->addWidget(waiting_, 1, 1);
  grid->addWidget(button("take_paper", tr("Take a paper"), Qt::CTRL | Qt::Key_R, &AnswerPanel::take_paper), 2,
                  0);
  grid->addWidget(button("lesson", tr("Attest a lesson"), Qt::CTRL | Qt::Key_J, &AnswerPanel::attest_lesson),
                  2, 1);
  presence_ = button("presence", tr("Came in"), Qt::CTRL | Qt::Key_I, &AnswerPanel::toggle_presence);
  grid->addWidget(presence_, 3, 0);
  grid->addWidget(button("print", tr("Print this"), Qt::CTRL | Qt::Key_P, &AnswerPanel::print), 3, 1);
  grid->addWidget(button("blank", tr("Blank this"), Qt::CTRL | Qt::Key_B, &AnswerPanel::toggle_blank), 4, 0);
  quiz_ = button("quiz", tr("Paper quiz"), Qt::CTRL | Qt::Key_M, &AnswerPanel::enter_quiz);
  grid->addWidget(quiz_, 4, 1);
  start_ = button("start", tr("Starts the machine…"), Qt::CTRL | Qt::Key_G, &AnswerPanel::start_or_leave);
  grid->addWidget(start_, 5, 0, 1, 2);
  session_button_ = button("session", tr("Past session…"), Qt::CTRL | Qt::Key_O, &AnswerPanel::enter_session);
  grid->addWidget(session_button_, 6, 0);
  duty_ = button("duty", {}, Qt::CTRL | Qt::SHIFT | Qt::Key_I, &AnswerPanel::toggle_duty);
  grid->addWidget(duty_, 6, 1);
  return grid;
}

QString AnswerPanel::who() const { return person_name(session_.person(person_)); }

void AnswerPanel::show_answer(const ShopNow& shop, const PersonId& person, const TargetName& target) {
  // Nobody is started in place of somebody else who was looked up meanwhile.
  const bool other = person != person_ || target != target_;
  if (other && (stack_->currentWidget() == start_form_ || stack_->currentWidget() == session_form_))
    stack_->setCurrentIndex(0);
  person_ = person;
  target_ = target;
  answer_ = desk_answer(session_, shop, person, target);
  present_ = shop.is_present(session_.joined(person));
  on_duty_ = std::binary_search(shop.staff.begin(), shop.staff.end(), session_.joined(person));
  const auto role = session_.role_of(person);
  has_duty_ = role && *role != db::Role::quiz_station;
  presence_->say(present_ ? tr("Has left") : tr("Came in"));
  duty_->say(on_duty_ ? tr("Off duty") : tr("On duty"));
  duty_->setVisible(has_duty_);
  const db::AtMachine* at = shop.machine_of(session_.joined(person));
  start_->say(at ? tr("Has left the machine…") : tr("Starts the machine…"));
  machine_->setText(answer_.machine);
  ladder_->set(answer_.rung);
  sentence_->setText(answer_.sentence);
  since_->setText(answer_.since);
  since_->setVisible(!answer_.since.isEmpty());
  now_->setText(answer_.now);
  now_->setVisible(!answer_.now.isEmpty());
  quiz_->setVisible(enters_quizzes());
  waiting_->say(waits() ? tr("Stop waiting") : tr("Waiting list"));
  session_button_->setVisible(session_.permitted(db::EnterFact{Supervised{}}).has_value());
  needs_title_->setText(answer_.needs_title);
  needs_->set(answer_.needs);
  offer(answer_, shop);
}

void AnswerPanel::offer(const DeskAnswer& answer, const ShopNow& shop) {
  offer_ = {};
  QString words, next = answer.next;
  // What was known then is looked at; nothing can be entered for it any more.
  switch (session_.known() ? NextStep::nothing : answer.step.step) {
    case NextStep::paper:
      words = tr("Take the paper");
      break;
    case NextStep::lesson:
      words = tr("Attest the lesson");
      break;
    case NextStep::quiz:
      words = offer_quiz(next);
      break;
    case NextStep::one_on_one:
      offer_ = booking_offer(session_, shop, person_, target_);
      next = (next + ' ' + offer_.sentence).trimmed();
      words = !offer_.button.isEmpty()               ? offer_.button
              : offer_.booked || waits().has_value() ? QString()
                                                     : tr("Put on the waiting list");
      break;
    case NextStep::nothing:
      break;
  }
  next_->setText(next);
  next_->setVisible(!next.isEmpty());
  primary_->say(words);
  primary_->setVisible(!words.isEmpty());
}

/// The button's words; why the station can't take it now is added to `next`.
QString AnswerPanel::offer_quiz(QString& next) {
  const auto offer = quiz_offer(session_, person_, answer_.step.item);
  at_station_ = offer && offer->not_now.isEmpty();
  if (at_station_) return tr("Start the quiz at the station");
  if (offer) next += ' ' + offer->not_now;
  return enters_quizzes() ? tr("Enter the quiz from paper") : QString();
}

void AnswerPanel::do_next() {
  switch (answer_.step.step) {
    case NextStep::paper:
      return take_paper();
    case NextStep::lesson:
      return attest_lesson();
    case NextStep::quiz:
      return at_station_ ? start_quiz() : enter_quiz();
    case NextStep::one_on_one:
      if (!offer_.held.empty()) return confirm();
      return offer_.booking ? book() : wait();
    case NextStep::nothing:
      return;
  }
}

void AnswerPanel::report(const Expected<db::Committed>& done, const QString& sentence) {
  if (done)
    emit tell(sentence);
  else
    emit tell_problem(done.error());
}

void AnswerPanel::book() {
  const db::Booking booking = *offer_.booking;
  const QString words = booking_words(session_, shop_now(session_), booking);
  report(session_.commit(db::EnterShopFact{booking}), tr("Booked %1: %2.", "who, when").arg(who(), words));
}

void AnswerPanel::another_time() {
  Place place;
  place.page = "diary";
  place.person = person_;
  place.target = target_;
  emit go(place);
}

void AnswerPanel::confirm() {
  report(session_.commit(db::EnterShopFact{db::Confirmed{offer_.held}}),
         tr("%1 comes for certain.").arg(who()));
}

std::optional<WaitingLine> AnswerPanel::waits() const { return waiting_of(session_, person_, target_); }

void AnswerPanel::wait() {
  const auto place = waits();
  const QString words = place ? tr("%1 is off the waiting list for %2.").arg(who(), target_phrase(target_))
                              : tr("%1 is on the waiting list for %2.").arg(who(), target_phrase(target_));
  const db::ShopFact fact =
      place ? db::ShopFact(db::WaitingEnd{place->id}) : db::ShopFact(db::Waiting{person_, target_});
  report(session_.commit(db::EnterShopFact{fact}), words);
}

void AnswerPanel::take_paper() { open_form(PaperForm::Kind::paper); }
void AnswerPanel::attest_lesson() { open_form(PaperForm::Kind::lesson); }
void AnswerPanel::enter_quiz() { open_form(PaperForm::Kind::quiz); }

void AnswerPanel::start_quiz() {
  quiz_form_->start(shop_now(session_), person_, answer_.step.item);
  stack_->setCurrentWidget(quiz_form_);
  quiz_form_->setFocus();
}

void AnswerPanel::open_form(PaperForm::Kind kind) {
  const bool next_is_of_kind = (kind == PaperForm::Kind::paper && answer_.step.step == NextStep::paper) ||
                               (kind == PaperForm::Kind::lesson && answer_.step.step == NextStep::lesson) ||
                               (kind == PaperForm::Kind::quiz && answer_.step.step == NextStep::quiz);
  form_->start(kind, person_, next_is_of_kind ? answer_.step.item : std::string());
  stack_->setCurrentWidget(form_);
  form_->setFocus();
}

void AnswerPanel::print() {
  const auto where = print_answer(session_, who(), answer_, offer_.sentence);
  if (where)
    emit tell(*where);
  else
    emit tell_problem(where.error());
}

void AnswerPanel::toggle_presence() {
  if (!present_)
    return report(session_.commit(db::EnterShopFact{db::Presence{person_, true, false}}),
                  (has_duty_ ? tr("%1 is here, off duty.") : tr("%1 is here.")).arg(who()));
  const QString still = still_at_machines();
  report(session_.commit(db::EnterShopFact{db::Presence{person_, false, false}}),
         (tr("%1 has left.").arg(who()) + ' ' + still).trimmed());
}

/// What whoever goes has left behind, and what to enter; nothing where they are at no machine.
QString AnswerPanel::still_at_machines() const {
  const ShopNow shop = shop_now(session_);
  QStringList where;
  for (const db::AtMachine& each : shop.machines_of(session_.joined(person_)))
    where << tr("%1: %2", "who, machine")
                 .arg(person_name(session_.person(each.person)), unit_words(shop, each.machine));
  if (where.isEmpty()) return {};
  return tr("Still noted as at a machine with them: %1. Enter when it was left, no later than now: “%2”.")
      .arg(where.join(tr("; ", "between machines")), tr("Has left the machine…"));
}

/// On duty or for themselves is theirs to say: staff come in to use machines too.
void AnswerPanel::toggle_duty() {
  report(session_.commit(db::EnterShopFact{db::Presence{person_, true, !on_duty_}}),
         (on_duty_ ? tr("%1 is here, off duty.") : tr("%1 is here, on duty.")).arg(who()));
}

void AnswerPanel::start_or_leave() {
  start_form_->begin(shop_now(session_), person_, target_);
  stack_->setCurrentWidget(start_form_);
  start_form_->setFocus();
}

void AnswerPanel::enter_session() {
  session_form_->begin(person_, target_);
  stack_->setCurrentWidget(session_form_);
  session_form_->setFocus();
}

void AnswerPanel::toggle_blank() { stack_->setCurrentIndex(stack_->currentIndex() == 1 ? 0 : 1); }

}  // namespace wm::app
