#include "app/desk/session_form.h"

#include "app/hours/moment.h"
#include "app/hours/reading.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {

SessionForm::SessionForm(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(20, 16, 20, 16);
}

void SessionForm::begin(const PersonId& person, const TargetName& target) {
  person_ = person;
  target_ = target;
  if (form_) form_->deleteLater();
  form_ = new Form(tr("%1 worked supervised: %2", "who, machine")
                       .arg(person_name(session_.person(person)), target_label(target)),
                   tr("Record the session"));
  form_->findChild<KeyButton*>("leave")->say(tr("Back"));
  time_ = form_->line(tr("At what time it began"), "session_time");
  time_->setPlaceholderText(QStringLiteral("17:30"));
  day_ = new DateField(tr("today"));
  day_->setObjectName("session_day");
  day_->set_today(session_.zone().day(session_.now()));
  form_->add_field(tr("On which day"), day_);
  minutes_ = form_->line(tr("For how long: 45, or 1:30"), "session_minutes");
  supervisor_ = new PersonBox(session_, [this](const db::Person& each) {
    return session_.joined(each.id) != session_.joined(person_);
  });
  supervisor_->setObjectName("session_supervisor");
  form_->add_field(tr("Supervised by"), supervisor_);
  from_ = session_.role() == db::Role::manager
              ? form_->choice(tr("How it is known"), "session_from",
                              {{QString(), tr("it was seen: the supervisor could supervise then")},
                               {QStringLiteral("paper"), tr("it stands on a paper of the past")}})
              : nullptr;
  form_->say(
      session_.role() == db::Role::manager
          ? tr("What is noted when a machine is started and left need not be entered here.")
          : tr("What is noted when a machine is started and left need not be entered here. What is known "
               "only from a paper of the past a manager enters."));
  column_->addWidget(form_);
  setFocusProxy(form_);
  connect(form_, &Form::left, this, &SessionForm::closed);
  connect(form_, &Form::saved, this, &SessionForm::enter);
  connect(day_, &DateField::refused, form_, qOverload<const Problem&>(&Form::show_problem));
  time_->setFocus();
}

Expected<Supervised> SessionForm::read(const std::optional<Instant>& at) const {
  if (!at) {
    time_->setFocus();
    return mistyped(tr("time"), tr("It is not said when it began"),
                    tr("Type the time as 17:30, and its day"));
  }
  const auto minutes = read_minutes(minutes_->text().trimmed(), tr("minutes"));
  if (!minutes) return tl::make_unexpected(minutes.error());
  if (!*minutes || **minutes < 1) {
    minutes_->setFocus();
    return mistyped(tr("minutes"), tr("It is not said for how long"), tr("Type the minutes, as 45"));
  }
  if (*at + std::int64_t{60} * **minutes > session_.now())
    return mistyped(tr("minutes"), tr("By this it would not be over yet"),
                    tr("Check the time and the minutes"));
  if (!supervisor_->person()) {
    supervisor_->field()->setFocus();
    return mistyped(tr("supervisor"), tr("It is not said who supervised"), tr("Choose them from the list"));
  }
  return Supervised{person_, target_, **minutes, *supervisor_->person()};
}

void SessionForm::enter() {
  const auto at = read_moment(session_, *day_, *time_);
  if (!at) return form_->show_problem(at.error());
  const auto worked = read(*at);
  if (!worked) return form_->show_problem(worked.error());
  const bool from_paper = from_ && from_->currentIndex() == 1;
  const auto done = session_.commit(db::EnterFact{*worked}, *at, {}, from_paper);
  if (!done) return form_->show_problem(done.error());
  emit closed();
  emit tell(tr("Recorded: %1, %2 min on %3, supervised by %4.", "who, minutes, machine, who")
                .arg(person_name(session_.person(person_)), QString::number(worked->minutes),
                     target_label(target_), person_name(session_.person(worked->supervisor))));
}

}  // namespace wm::app
