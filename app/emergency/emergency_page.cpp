#include "app/emergency/emergency_page.h"

#include <QGridLayout>
#include <QLabel>

#include "app/emergency/block.h"
#include "app/emergency/units_list.h"
#include "app/theme/theme.h"
#include "app/words/words.h"

namespace wm::app {

EmergencyPage::EmergencyPage(Session& session, QWidget* parent)
    : Page(session, parent),
      machine_(new QComboBox),
      tag_(new QLineEdit),
      reason_(new QLineEdit),
      stopped_(new PersonBox(session)),
      why_(new QLineEdit),
      happened_(new QStackedWidget),
      form_(new IncidentForm(session)),
      follows_(new WhatFollows(session)),
      here_(new HereNow(session)) {
  machine_->setObjectName("broken_machine");
  machine_->setPlaceholderText(tr("choose a machine"));
  stopped_->field()->setObjectName("stopped_person");
  auto* heading = new QLabel(EmergencyPage::title());
  heading->setProperty("role", "large");
  auto* inside = new QWidget;
  auto* grid = new QGridLayout(inside);
  grid->setContentsMargins(24, 18, 20, 18);
  grid->setHorizontalSpacing(16);
  grid->setVerticalSpacing(12);
  grid->addWidget(heading, 0, 0, 1, 2);
  grid->addWidget(steps(), 1, 0, 1, 2);
  grid->addWidget(machine_block(), 2, 0);
  grid->addWidget(stop_block(), 3, 0);
  grid->addWidget(happened(), 2, 1, 2, 1);
  grid->addWidget(here_, 4, 0, 1, 2);
  connect(here_, &HereNow::go, this, &Page::go);
  grid->setColumnStretch(0, 1);
  grid->setColumnStretch(1, 2);
  grid->setRowStretch(5, 1);
  auto* scroll = new QScrollArea;
  scroll->setWidget(inside);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scroll);
}

QWidget* EmergencyPage::happened() {
  happened_->addWidget(form_);
  happened_->addWidget(follows_);
  connect(form_, &IncidentForm::recorded, this, [this](const Recorded& what) {
    happened_->setCurrentWidget(follows_);
    follows_->show_of(what, shop_now(session()));
  });
  connect(form_, &IncidentForm::tell_problem, this, &Page::tell_problem);
  connect(follows_, &WhatFollows::over, this, [this] {
    happened_->setCurrentWidget(form_);
    form_->setFocus();
  });
  connect(follows_, &WhatFollows::go, this, &Page::go);
  connect(follows_, &WhatFollows::tell, this, &Page::tell);
  connect(follows_, &WhatFollows::tell_problem, this, &Page::tell_problem);
  return happened_;
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

void EmergencyPage::refresh() {
  const ShopNow shop = shop_now(session());
  list_units(*machine_, shop);
  form_->refresh(shop);
  follows_->refresh(shop);
  here_->refresh(shop);
}

void EmergencyPage::open(const Place& place) {
  if (!place.machine.empty()) {
    choose_unit(*machine_, place.machine);
    form_->choose(place.machine);
  }
  machine_->setFocus();
}

void EmergencyPage::put_out_of_service() {
  if (machine_->currentIndex() < 0) {
    machine_->setFocus();
    return emit tell_problem(
        {"choice", tr("No machine is chosen").toStdString(), tr("Choose it from the list").toStdString()});
  }
  const QString machine = machine_->currentText();
  const db::PutOutOfService put{unit_in(*machine_),
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

}  // namespace wm::app
