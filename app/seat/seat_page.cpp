#include "app/seat/seat_page.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/seat/left_alone.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {

namespace {
QLabel* field_label(const QString& words, QWidget* field) {
  auto* label = new QLabel(words);
  label->setBuddy(field);
  return label;
}
}  // namespace

QString role_words(db::Role role) {
  switch (role) {
    case db::Role::quiz_station:
      return SeatPage::tr("quiz station");
    case db::Role::desk:
      return SeatPage::tr("front desk");
    case db::Role::instructor:
      return SeatPage::tr("instructor");
    case db::Role::manager:
      return SeatPage::tr("manager");
  }
  return {};
}

SeatPage::SeatPage(Session& session, QWidget* parent)
    : Page(session, parent),
      who_(new PersonBox(
          session, [&session](const db::Person& p) { return session.store().role_of(p.id).has_value(); })),
      pin_(new QLineEdit),
      alone_(new QComboBox) {
  auto* title = new QLabel(tr("Who sits here?"));
  title->setProperty("role", "large");
  auto* quiet =
      new QLabel(tr("Everything entered from here on carries this name. Hand over when you leave."));
  quiet->setProperty("role", "quiet");
  pin_->setEchoMode(QLineEdit::Password);
  pin_->setObjectName("pin");
  pin_->setAccessibleName(tr("PIN"));
  who_->field()->setObjectName("seat_person");
  alone_->setObjectName("left_alone");
  for (const int minutes : {5, 10, 30, 60}) alone_->addItem(tr("after %n minutes", "", minutes), minutes);
  alone_->addItem(tr("never"), 0);
  connect(alone_, &QComboBox::activated, this,
          [this] { set_minutes_left_alone(alone_->currentData().toInt()); });
  auto* sit = new KeyButton(tr("Sit down"), Qt::CTRL | Qt::Key_Return, true);
  auto* form = new QWidget;
  form->setFixedWidth(380);
  auto* column = new QVBoxLayout(form);
  column->setContentsMargins(24, 22, 0, 0);
  column->setSpacing(8);
  for (QWidget* widget : std::initializer_list<QWidget*>{title, quiet}) column->addWidget(widget);
  quiet->setWordWrap(true);
  column->addSpacing(12);
  column->addWidget(field_label(tr("Name"), who_->field()));
  column->addWidget(who_);
  column->addWidget(field_label(tr("PIN"), pin_));
  column->addWidget(pin_);
  column->addSpacing(6);
  column->addWidget(sit);
  column->addSpacing(24);
  column->addWidget(field_label(tr("Untouched, this computer goes back to nobody"), alone_));
  column->addWidget(alone_);
  column->addStretch(1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(form);
  row->addStretch(1);
  connect(who_, &PersonBox::chosen, pin_, qOverload<>(&QWidget::setFocus));
  connect(pin_, &QLineEdit::returnPressed, this, &SeatPage::sit_down);
  connect(sit, &KeyButton::clicked, this, &SeatPage::sit_down);
}

void SeatPage::open(const Place& place) {
  pin_->clear();
  alone_->setCurrentIndex(alone_->findData(minutes_left_alone()));
  who_->set_person(place.person.empty() ? std::nullopt : std::optional(place.person));
  who_->show_all_when_empty(true);
  (place.person.empty() ? static_cast<QWidget*>(who_) : pin_)->setFocus();
}

void SeatPage::sit_down() {
  if (!who_->person()) {
    who_->setFocus();
    return emit tell_problem({"name", tr("Nobody is chosen").toStdString(),
                              tr("Type part of your name and press Enter").toStdString()});
  }
  const auto role = session().sit_down(*who_->person(), pin_->text().toStdString());
  pin_->clear();
  if (!role) {
    pin_->setFocus();
    return emit tell_problem(role.error());
  }
  emit tell(tr("%1 sits here, as %2.").arg(person_name(session().seated()), role_words(*role)));
  emit done();
}

void SeatPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return emit done();
  Page::keyPressEvent(event);
}

}  // namespace wm::app
