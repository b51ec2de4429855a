#include "app/quiz/ask_views.h"

#include <QVBoxLayout>

#include "app/quiz/tr.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

/// Everything in the middle, no wider than a person reads.
QVBoxLayout* middle_column(QWidget* page) {
  auto* inside = new QWidget;
  inside->setMaximumWidth(760);
  inside->setMinimumWidth(560);
  auto* column = new QVBoxLayout(inside);
  column->setSpacing(16);
  auto* row = new QHBoxLayout(page);
  row->addStretch(1);
  row->addWidget(inside, 4);
  row->addStretch(1);
  return column;
}

}  // namespace

WhoView::WhoView(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), number_(new QLineEdit), told_(station_label(20)) {
  number_->setObjectName("member_number");
  number_->setAccessibleName(tr("Member's number"));
  number_->setFont(sized(34));
  told_->setObjectName("told");
  auto* on = new StationButton(tr("Go on"), {}, true);
  auto* column = middle_column(this);
  column->addStretch(1);
  column->addWidget(station_label(34, true, QString::fromStdString(session.store().details().name)));
  column->addWidget(station_label(
      27, false, tr("Take a quiz: type your member's number, or hold your card to the reader.")));
  column->addWidget(number_);
  column->addWidget(on, 0, Qt::AlignRight);
  column->addWidget(told_);
  column->addStretch(2);
  setFocusProxy(number_);
  connect(number_, &QLineEdit::returnPressed, this, &WhoView::look);
  connect(on, &QPushButton::clicked, this, &WhoView::look);
}

void WhoView::start(const QString& told) {
  number_->clear();
  told_->setText(told);
  number_->setFocus();
}

void WhoView::look() {
  const QString typed = number_->text().trimmed();
  if (typed.isEmpty()) return;
  for (const db::Person& person : session_.store().people())
    if (!person.number.empty() && typed == QString::fromStdString(person.number))
      return emit known(session_.store().joined(person.id));
  start(tr("Nobody here has the number %1. Type it as it stands on your card, or ask the desk.").arg(typed));
}

void WhoView::take_card(const QString& card) {
  for (const db::Person& person : session_.store().people())
    if (!person.card.empty() && card == QString::fromStdString(person.card))
      return emit known(session_.store().joined(person.id));
  start(tr("This card belongs to nobody here. Type your number instead, or ask the desk."));
}

HandInView::HandInView(QWidget* parent)
    : QWidget(parent),
      what_(station_label(27, true)),
      problem_(station_label(20)),
      yes_(new StationButton(tr("Hand in"), Qt::CTRL | Qt::Key_Return, true)),
      no_(new StationButton(tr("Back to the questions"), Qt::Key_Escape)) {
  what_->setObjectName("what_is_open");
  problem_->setObjectName("hand_in_problem");
  yes_->setObjectName("hand_in_now");
  auto* column = middle_column(this);
  auto* row = new QHBoxLayout;
  row->addWidget(no_);
  row->addStretch(1);
  row->addWidget(yes_);
  column->addStretch(1);
  column->addWidget(what_);
  column->addWidget(problem_);
  column->addSpacing(20);
  column->addLayout(row);
  column->addStretch(2);
  connect(yes_, &QPushButton::clicked, this, &HandInView::hand_in);
  connect(no_, &QPushButton::clicked, this, &HandInView::back);
}

void HandInView::start(const Sitting& sitting) {
  problem_->clear();
  QStringList said;
  const auto open = static_cast<int>(sitting.open_count()), later = static_cast<int>(sitting.later_count());
  said << (open == 0   ? tr("Every question has an answer.")
           : open == 1 ? tr("1 question is open; an open one is not right.")
                       : tr("%n questions are open; an open one is not right.", "", open));
  if (later > 0)
    said << (later == 1 ? tr("You wanted to come back to 1.")
                        : tr("You wanted to come back to %n.", "", later));
  said << tr("Once handed in, nothing can be changed.");
  what_->setText(said.join(' '));
  yes_->setFocus();
}

void HandInView::show_problem(const Problem& problem) { problem_->setText(problem_sentence(problem)); }

LeaveView::LeaveView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      what_(station_label(24, true)),
      problem_(station_label(20)),
      who_(new PersonBox(session,
                         [&session](const db::Person& p) {
                           const auto role = session.store().role_of(p.id);
                           return role && *role != db::Role::quiz_station;
                         })),
      pin_(new QLineEdit) {
  what_->setObjectName("leave_words");
  problem_->setObjectName("leave_problem");
  pin_->setObjectName("leave_pin");
  pin_->setEchoMode(QLineEdit::Password);
  pin_->setAccessibleName(tr("PIN"));
  who_->field()->setObjectName("leave_person");
  pin_->setFont(sized(20));
  who_->field()->setFont(sized(20));
  auto* yes = new StationButton(tr("Leave"), Qt::CTRL | Qt::Key_Return, true);
  auto* no = new StationButton(tr("Go back"), Qt::Key_Escape);
  yes->setObjectName("leave_now");
  auto* column = middle_column(this);
  auto* row = new QHBoxLayout;
  row->addWidget(no);
  row->addStretch(1);
  row->addWidget(yes);
  column->addStretch(1);
  column->addWidget(what_);
  column->addWidget(station_label(18, false, tr("Somebody of the desk")));
  column->addWidget(who_);
  column->addWidget(station_label(18, false, tr("PIN")));
  column->addWidget(pin_);
  column->addWidget(problem_);
  column->addLayout(row);
  column->addStretch(2);
  connect(who_, &PersonBox::chosen, pin_, qOverload<>(&QWidget::setFocus));
  connect(pin_, &QLineEdit::returnPressed, this, &LeaveView::check);
  connect(yes, &QPushButton::clicked, this, &LeaveView::check);
  connect(no, &QPushButton::clicked, this, &LeaveView::back);
}

void LeaveView::start(bool during) {
  what_->setText(during
                     ? tr("Leaving ends this attempt: it is marked as it stands. The desk can let you leave.")
                     : tr("The desk can close the station."));
  problem_->clear();
  pin_->clear();
  who_->set_person({});
  who_->setFocus();
}

void LeaveView::check() {
  if (!who_->person()) {
    problem_->setText(tr("Nobody is chosen. Type part of the name and press Enter."));
    return who_->setFocus();
  }
  const auto role = session_.check_pin(*who_->person(), pin_->text().toStdString());
  pin_->clear();
  if (role && *role != db::Role::quiz_station) return emit allowed();
  problem_->setText(role ? tr("That takes somebody of the desk.") : problem_sentence(role.error()));
  pin_->setFocus();
}

}  // namespace wm::app
