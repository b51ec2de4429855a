#include "app/emergency/emergency_page.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desk/shop_now.h"
#include "app/theme/theme.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

// A block of the page: a heading and its fields, framed.
struct Block {
  QFrame* frame = new QFrame;
  QVBoxLayout* column = new QVBoxLayout(frame);

  explicit Block(const QString& title) {
    frame->setProperty("role", "paper");
    column->setContentsMargins(18, 14, 18, 16);
    column->setSpacing(4);
    auto* heading = new QLabel(title);
    heading->setFont(type(TypeSize::body, true));
    column->addWidget(heading);
    column->addSpacing(4);
  }
  void field(const QString& words, QWidget* widget) {
    auto* label = new QLabel(words);
    label->setProperty("role", "quiet");
    label->setBuddy(widget);
    widget->setAccessibleName(words);
    column->addWidget(label);
    column->addWidget(widget);
  }
  void finish(QWidget* button) {
    column->addSpacing(8);
    column->addStretch(1);
    column->addWidget(button);
  }
};

}  // namespace

EmergencyPage::EmergencyPage(Session& session, QWidget* parent)
    : Page(session, parent),
      machine_(new QComboBox),
      tag_(new QLineEdit),
      reason_(new QLineEdit),
      stopped_(new PersonBox(session)),
      why_(new QLineEdit),
      who_(new PersonBox(session)),
      target_(new QComboBox),
      severity_(new QComboBox),
      part_(new QComboBox),
      what_(new QLineEdit) {
  machine_->setObjectName("broken_machine");
  stopped_->field()->setObjectName("stopped_person");
  // Nothing is chosen beforehand: whoever is in haste would put the first machine of the list out of service.
  for (QComboBox* box : {machine_, target_}) box->setPlaceholderText(tr("choose a machine"));
  target_->setObjectName("incident_machine");
  severity_->setObjectName("severity");
  who_->field()->setObjectName("incident_person");
  severity_->setPlaceholderText(tr("choose"));
  auto* heading = new QLabel(EmergencyPage::title());
  heading->setProperty("role", "large");
  incident_ = incident_block();
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(24, 18, 20, 18);
  grid->setHorizontalSpacing(16);
  grid->setVerticalSpacing(12);
  grid->addWidget(heading, 0, 0, 1, 3);
  grid->addWidget(steps(), 1, 0, 1, 3);
  grid->addWidget(machine_block(), 2, 0);
  grid->addWidget(stop_block(), 2, 1);
  grid->addWidget(incident_, 2, 2);
  for (int c = 0; c < 3; ++c) grid->setColumnStretch(c, 1);
  grid->setRowStretch(3, 1);
}

// The order is common practice, no source; the local plan of the shop comes first.
QWidget* EmergencyPage::steps() {
  const QString lines[] = {
      tr("Call the local emergency number. Say where you are, what happened, how many are hurt."),
      tr("Stop the machine at its emergency stop. Isolate it from its supply before anybody reaches into "
         "it."),
      tr("Help as you were taught. Stay with whoever is hurt, and send somebody to the door."),
      tr("Keep the scene as it is once everybody is cared for: nothing moved, nothing cleaned, nothing "
         "restarted."),
      tr("Tell the manager. Local law may ask for a report within hours: see the notice beside this desk."),
      tr("Only then enter it here: the machine out of service, and what happened."),
  };
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 6);
  column->setSpacing(5);
  int number = 0;
  for (const QString& line : lines) {
    auto* label = new QLabel(tr("%1.  %2", "number, step").arg(++number).arg(line));
    label->setWordWrap(true);
    label->setFont(type(TypeSize::body, number <= 2));
    column->addWidget(label);
  }
  return box;
}

QWidget* EmergencyPage::machine_block() {
  Block block(tr("Put a machine out of service"));
  block.field(tr("Machine"), machine_);
  block.field(tr("What is wrong"), reason_);
  block.field(tr("Tag, as it hangs on the machine"), tag_);
  auto* button = new KeyButton(tr("Out of service"), Qt::CTRL | Qt::Key_1);
  button->setObjectName("put_out");
  connect(button, &KeyButton::clicked, this, &EmergencyPage::put_out_of_service);
  block.finish(button);
  return block.frame;
}

QWidget* EmergencyPage::stop_block() {
  Block block(tr("Stop somebody for tonight"));
  block.field(tr("Who"), stopped_);
  block.field(tr("Why (only instructors and managers read it)"), why_);
  auto* button = new KeyButton(tr("Pause for tonight"), Qt::CTRL | Qt::Key_2);
  button->setObjectName("stop_person");
  connect(button, &KeyButton::clicked, this, &EmergencyPage::stop_somebody);
  block.finish(button);
  return block.frame;
}

QWidget* EmergencyPage::incident_block() {
  Block block(tr("Record what happened"));
  severity_->addItem(tr("1, the gravest"), 1);
  severity_->addItem(tr("2, grave"), 2);
  severity_->addItem(tr("3, slight"), 3);
  // Nothing is taken away for it, so that people report it.
  severity_->addItem(tr("4, a near miss"), 4);
  severity_->setCurrentIndex(-1);
  part_->addItem(tr("was working"), static_cast<int>(Part::operating));
  part_->addItem(tr("was supervising"), static_cast<int>(Part::supervising));
  part_->addItem(tr("was hurt"), static_cast<int>(Part::hurt));
  part_->addItem(tr("saw it"), static_cast<int>(Part::saw));
  block.field(tr("Who"), who_);
  block.field(tr("What part they had"), part_);
  block.field(tr("At which machine"), target_);
  block.field(tr("How grave"), severity_);
  block.field(tr("What happened"), what_);
  auto* button = new KeyButton(tr("Record it"), Qt::CTRL | Qt::Key_3);
  button->setObjectName("record_incident");
  connect(button, &KeyButton::clicked, this, &EmergencyPage::record_incident);
  block.finish(button);
  return block.frame;
}

void EmergencyPage::refresh() {
  const ShopNow shop = shop_now(session());
  const QVariant chosen = machine_->currentData();
  machine_->clear();
  for (const auto& [id, unit] : shop.units)
    machine_->addItem(tr("%1, %2", "machine, unit").arg(class_label(unit.machine_class), shop.unit_label(id)),
                      QString::fromStdString(id));
  machine_->setCurrentIndex(machine_->findData(chosen));
  const QVariant at_which = target_->currentData();
  target_->clear();
  if (const Rulebook* book = session().decider().in_force(session().now()))
    for (const TargetName& target : targets_of(*book))
      target_->addItem(target_label(target), QString::fromStdString(target));
  target_->setCurrentIndex(target_->findData(at_which));
  incident_->setVisible(session().role() && *session().role() >= db::Role::instructor);
}

void EmergencyPage::open(const Place& place) {
  if (!place.machine.empty())
    machine_->setCurrentIndex(machine_->findData(QString::fromStdString(place.machine)));
  machine_->setFocus();
}

Problem EmergencyPage::nothing_chosen(QComboBox* box, const QString& what) {
  box->setFocus();
  return {"choice", what.toStdString(), tr("Choose it from the list").toStdString()};
}

void EmergencyPage::put_out_of_service() {
  if (machine_->currentIndex() < 0)
    return emit tell_problem(nothing_chosen(machine_, tr("No machine is chosen")));
  const QString machine = machine_->currentText();
  const db::PutOutOfService put{machine_->currentData().toString().toStdString(),
                                tag_->text().toStdString(),
                                {},
                                reason_->text().toStdString(),
                                session().seated() ? session().seated()->id : PersonId()};
  const auto done = session().commit(put);
  if (!done) {
    reason_->setFocus();
    return emit tell_problem(done.error());
  }
  for (QLineEdit* field : {tag_, reason_}) field->clear();
  machine_->setCurrentIndex(-1);
  emit tell(tr("%1 is out of service. Hang the tag on it now.").arg(machine));
}

void EmergencyPage::stop_somebody() {
  if (!stopped_->person())
    return emit tell_problem({"person", tr("Nobody is chosen").toStdString(),
                              tr("Type part of a name and press Enter").toStdString()});
  const PersonId person = *stopped_->person();
  const Day tonight = session().zone().day(session().now());
  const auto done = session().commit(db::EnterFact{Suspend{person, Everything{}, tonight}}, std::nullopt,
                                     why_->text().toStdString());
  if (!done) return emit tell_problem(done.error());
  why_->clear();
  stopped_->set_person({});
  emit tell(
      tr("%1 is paused on every machine through today.").arg(person_name(session().store().person(person))));
}

void EmergencyPage::record_incident() {
  if (!who_->person())
    return emit tell_problem({"person", tr("Nobody is chosen").toStdString(),
                              tr("Type part of a name and press Enter").toStdString()});
  if (target_->currentIndex() < 0)
    return emit tell_problem(nothing_chosen(target_, tr("No machine is chosen")));
  if (severity_->currentIndex() < 0)
    return emit tell_problem(nothing_chosen(severity_, tr("It is not said how grave it was")));
  const QString machine = target_->currentText();
  const Incident incident{*who_->person(), target_->currentData().toString().toStdString(),
                          severity_->currentData().toInt(), static_cast<Part>(part_->currentData().toInt())};
  const auto done = session().commit(db::EnterFact{incident}, std::nullopt, what_->text().toStdString());
  if (!done) return emit tell_problem(done.error());
  what_->clear();
  who_->set_person({});
  for (QComboBox* box : {target_, severity_}) box->setCurrentIndex(-1);
  emit tell(tr("What happened at %1 is recorded.").arg(machine));
}

}  // namespace wm::app
