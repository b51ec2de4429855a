#include "app/desk/start_form.h"

#include <QLabel>
#include <algorithm>

#include "app/desk/answer.h"
#include "app/hours/reading.h"
#include "app/hours/weekly.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"
#include "core/diary/wall.h"
#include "db/journal/subject.h"

namespace wm::app {

StartForm::StartForm(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(20, 16, 20, 16);
}

QString StartForm::who() const { return person_name(session_.person(person_)); }

Form* StartForm::fresh(const QString& heading, const QString& save_words) {
  if (form_) form_->deleteLater();
  form_ = new Form(heading, save_words);
  unit_ = supervisor_ = nullptr;
  said_ = nullptr;
  // The form's own words would say that the machine is left.
  form_->findChild<KeyButton*>("leave")->say(tr("Back"));
  column_->addWidget(form_);
  setFocusProxy(form_);
  connect(form_, &Form::left, this, &StartForm::closed);
  return form_;
}

void StartForm::begin(const ShopNow& shop, const PersonId& person, const TargetName& target) {
  shop_ = shop;
  person_ = person;
  target_ = target;
  const auto at = shop_.machines_of(session_.joined(person));
  if (at.empty())
    ask_to_start();
  else if (at.size() == 1)
    ask_to_leave(at.front());
  else
    ask_who_leaves(at);
}

/// Somebody who supervises several: one of them is left at a time.
void StartForm::ask_who_leaves(const std::vector<db::AtMachine>& at) {
  Form* form = fresh(tr("%1 supervises several").arg(who()), tr("Go on"));
  std::vector<std::pair<QString, QString>> choices;
  for (const db::AtMachine& each : at)
    choices.emplace_back(
        QString::fromStdString(each.started),
        tr("%1: %2", "who, machine")
            .arg(person_name(session_.person(each.person)), unit_words(shop_, each.machine)));
  QComboBox* whose = form->choice(tr("Who has left"), "who_leaves", choices);
  connect(form, &Form::saved, this,
          [this, at, whose] { ask_to_leave(at[static_cast<std::size_t>(whose->currentIndex())]); });
  whose->setFocus();
}

void StartForm::ask_to_leave(const db::AtMachine& at) {
  Form* form =
      fresh(tr("%1: left again", "machine").arg(unit_words(shop_, at.machine)), tr("They have left it"));
  const QString name = person_name(session_.person(at.person));
  const auto time_of = [this](Instant t) { return time_words(t, session_.zone(), session_.now()); };
  QString said = at.supervisor.empty()
                     ? tr("%1 started it at %2.").arg(name, time_of(at.since))
                     : tr("%1 started it at %2, supervised by %3.")
                           .arg(name, time_of(at.since), person_name(session_.person(at.supervisor)));
  if (at.gone)
    said += ' ' + tr("%1 was noted as gone at %2: it was left by then.")
                      .arg(person_name(session_.person(at.gone->person)), time_of(at.gone->at));
  form->say(said);
  QLineEdit* time =
      form->line(may_be_now(at) ? tr("At what time it was left; empty: now") : tr("At what time it was left"),
                 "left_at");
  connect(form, &Form::saved, this, [this, at, time] { leave(at, time->text().trimmed()); });
  time->setFocus();
}

/// What was forgotten the day before, or by somebody who is gone, is not over only now.
bool StartForm::may_be_now(const db::AtMachine& at) const {
  return !at.gone && session_.zone().day(at.since) == session_.zone().day(session_.now());
}

void StartForm::leave(const db::AtMachine& at, const QString& typed) {
  std::optional<Instant> when;
  if (typed.isEmpty()) {
    if (!may_be_now(at))
      return form_->show_problem(tr("It was started at %1. Type at what time it was left, as 17:30.")
                                     .arg(time_words(at.since, session_.zone(), session_.now())));
  } else {
    const auto minute = read_minute(typed);
    if (!minute) return form_->show_problem(tr("“%1” is no time of day. Type it as 17:30.").arg(typed));
    // Of the day on which it was started, so that who forgot it yesterday can say so; or after midnight.
    const Day day = session_.zone().day(at.since);
    when = on_wall(session_.zone(), day, *minute);
    if (*when < at.since && at.since.seconds - when->seconds < 60) when = at.since;  // in that very minute
    if (*when < at.since) when = on_wall(session_.zone(), day + 1, *minute);
  }
  const auto done = session_.commit(db::LeaveMachine{at.started}, when);
  if (!done) return form_->show_problem(done.error());
  const auto* session = db::as<Supervised>(done->entries.back().fact);
  const bool used = db::as<Use>(done->entries.back().fact) != nullptr;
  const QString name = person_name(session_.person(at.person));
  emit closed();
  emit tell(session ? tr("%1 has left: %2 min supervised are recorded.").arg(name).arg(session->minutes)
            : used
                ? tr("%1 has left; the use is recorded.").arg(name)
                : tr("%1 has left after less than a minute: no session and no use is recorded.").arg(name));
}

void StartForm::ask_to_start() {
  Form* form = fresh(tr("%1 starts: %2", "who, machine").arg(who(), target_label(target_)), tr("Start it"));
  std::vector<std::pair<QString, QString>> units;
  for (const auto& [id, unit] : shop_.units) {
    if (unit.machine_class != class_of(target_)) continue;
    const db::AtMachine* used = shop_.in_use(id);
    units.emplace_back(QString::fromStdString(id),
                       used ? tr("%1, in use by %2", "unit, who")
                                  .arg(shop_.unit_label(id), person_name(session_.person(used->person)))
                            : shop_.unit_label(id));
  }
  if (units.empty()) {
    form->say(tr("The shop has no unit of this machine."));
    return;
  }
  unit_ = form->choice(tr("Which unit"), "start_unit", units);
  supervisor_ = form->choice(tr("Supervised by"), "start_supervisor", {});
  said_ = form->say({});
  said_->setObjectName("start_said");
  for (int i = 0; i < unit_->count(); ++i)
    if (!shop_.in_use(unit_->itemData(i).toString().toStdString())) {
      unit_->setCurrentIndex(i);
      break;
    }
  connect(unit_, &QComboBox::currentIndexChanged, this, &StartForm::list_supervisors);
  connect(form, &Form::saved, this, &StartForm::start);
  list_supervisors();
  unit_->setFocus();
}

/// Those who are here, free and can; and what stands in the way, where something does.
void StartForm::list_supervisors() {
  const MachineId unit = unit_->currentData().toString().toStdString();
  const StartAnswer answer = may_start_now(session_, shop_, person_, target_, unit);
  supervisor_->clear();
  if (!answer.needs_supervisor) supervisor_->addItem(tr("nobody: without a supervisor"), QString());
  for (const PersonId& id : answer.may.can_supervise)
    supervisor_->addItem(person_name(session_.person(id)), QString::fromStdString(id));
  QStringList said = answer.hindrances;
  hindered_ = said.join(' ');
  if (!answer.warning.isEmpty()) said << answer.warning;
  form_->findChild<KeyButton*>("save")->say(answer.warning.isEmpty() ? tr("Start it")
                                                                     : tr("Start it all the same"));
  said_->setText(said.join(' '));
  said_->setVisible(!said.isEmpty());
}

void StartForm::start() {
  const auto done = session_.commit(
      db::EnterShopFact{db::Started{person_, unit_->currentData().toString().toStdString(), target_,
                                    supervisor_->currentData().toString().toStdString()}});
  if (!done) {
    // What the Desk says already names who can lift it.
    return hindered_.isEmpty() ? form_->show_problem(done.error()) : form_->show_problem(hindered_);
  }
  const QString where = unit_words(shop_, unit_->currentData().toString().toStdString()), name = who();
  emit closed();
  emit tell(tr("%1 is at %2 from now on.").arg(name, where));
}

}  // namespace wm::app
