#include "app/emergency/emergency_page.h"

#include <QResizeEvent>
#include <QScrollBar>
#include <QTimer>

#include "app/emergency/block.h"
#include "app/emergency/units_list.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {

EmergencyPage::EmergencyPage(Session& session, QWidget* parent)
    : Page(session, parent),
      scroll_(new QScrollArea),
      steps_(new CallSteps(CallSteps::Seen::page)),
      to_number_(new QPushButton),
      who_(new WhoIsHurt(session)),
      nobody_(role_label("")),
      then_(new QBoxLayout(QBoxLayout::LeftToRight)),
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
  machine_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  stopped_->field()->setObjectName("stopped_person");
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(24, 18, 20, 18);
  column->setSpacing(12);
  column->addWidget(first());
  nobody_->setObjectName("nobody_sits");
  nobody_->setFont(type(TypeSize::body, true));
  nobody_->setText(tr(
      "Nobody sits here. All of the above works like that. To put a machine out of service or to record what "
      "happened, whoever has a PIN sits down first (F10): once help is on its way, there is time. What is "
      "typed stays."));
  column->addWidget(nobody_);
  column->addWidget(then());
  column->addWidget(here_);
  column->addStretch(1);
  connect(here_, &HereNow::go, this, &Page::go);
  scroll_->setObjectName("emergency_scroll");
  scroll_->setWidget(inside);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scroll_);
}

/// What to call and do, and beside it whom to call for whoever is hurt: seen without scrolling.
QWidget* EmergencyPage::first() {
  auto* box = new QWidget;
  auto* row = new QHBoxLayout(box);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(20);
  row->addWidget(steps(), 3);
  row->addWidget(who_, 2);
  connect(who_, &WhoIsHurt::hurt, form_, &IncidentForm::add_hurt);
  connect(form_, &IncidentForm::hurt_changed, who_, &WhoIsHurt::show_people);
  return box;
}

QWidget* EmergencyPage::steps() {
  to_number_->setObjectName("to_emergency_number");
  to_number_->setProperty("role", "plain");
  connect(to_number_, &QPushButton::clicked, this, [this] {
    Place place;
    place.page = "rosters";
    place.item = "emergency";
    emit go(place);
  });
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(steps_);
  column->addWidget(to_number_, 0, Qt::AlignLeft);
  column->addStretch(1);
  return box;
}

QWidget* EmergencyPage::then() {
  auto* left = new QWidget;
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);
  column->addWidget(machine_block());
  column->addWidget(stop_block());
  column->addStretch(1);
  auto* box = new QWidget;
  box->setLayout(then_);
  then_->setContentsMargins(0, 0, 0, 0);
  then_->setSpacing(16);
  then_->addWidget(left, 1);
  then_->addWidget(happened(), 2);
  return box;
}

void EmergencyPage::resizeEvent(QResizeEvent* event) {
  constexpr int beside_each_other = 1000;
  then_->setDirection(event->size().width() < beside_each_other ? QBoxLayout::TopToBottom
                                                                : QBoxLayout::LeftToRight);
  Page::resizeEvent(event);
}

QWidget* EmergencyPage::happened() {
  happened_->addWidget(form_);
  happened_->addWidget(follows_);
  connect(form_, &IncidentForm::recorded, this, [this](const Recorded& what) {
    happened_->setCurrentWidget(follows_);
    follows_->show_of(what, shop_now(session()));
    // From its first word, wherever the form was scrolled to; once all above it has its size.
    QTimer::singleShot(0, this, [this] {
      scroll_->verticalScrollBar()->setValue(happened_->mapTo(scroll_->widget(), QPoint()).y() - 12);
    });
  });
  connect(form_, &IncidentForm::tell_problem, this, &Page::tell_problem);
  connect(follows_, &WhatFollows::over, this, [this] {
    happened_->setCurrentWidget(form_);
    who_->show_people({});
    form_->setFocus();
  });
  connect(follows_, &WhatFollows::go, this, &Page::go);
  connect(follows_, &WhatFollows::tell, this, &Page::tell);
  connect(follows_, &WhatFollows::tell_problem, this, &Page::tell_problem);
  return happened_;
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

/// Who is here, what is out of service and what follows are asked now, whatever day was being looked at: so
/// the dates of all pages go back to now, and what is opened from here answers for now too.
void EmergencyPage::refresh() {
  if (session().known() || session().asked_at()) {
    session().set_known({});
    session().set_asked_at({});
    emit tell(tr("This page is about now: the dates have gone back to it."));
  }
  const ShopNow shop = shop_now(session());
  show_call();
  who_->refresh();
  nobody_->setVisible(!session().seated());
  list_units(*machine_, shop);
  form_->refresh(shop);
  follows_->refresh(shop);
  here_->refresh(shop);
}

void EmergencyPage::show_call() {
  const db::EmergencyCall call = session().store().emergency_call();
  steps_->show_call(call);
  to_number_->setText(call.number.empty() ? tr("Enter the number…") : tr("Change the number…"));
  to_number_->setVisible(session().permitted(db::EnterShopFact{db::EmergencyCall{}}).has_value());
}

void EmergencyPage::open(const Place& place) {
  if (place.machine.empty()) return who_->setFocus();
  choose_unit(*machine_, place.machine);
  form_->choose(place.machine);
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
