#include "app/checkouts/countersign_fields.h"

#include <QHBoxLayout>
#include <algorithm>
#include <tuple>

#include "app/lists/answer_reader.h"

namespace wm::app {
namespace {

bool has_card(const Session& session, const PersonId& person,
              const std::function<bool(const std::string&)>& is) {
  return std::ranges::any_of(session.store().people(), [&](const db::Person& one) {
    return !one.card.empty() && is(one.card) && session.store().joined(one.id) == person;
  });
}

}  // namespace

CountersignFields::CountersignFields(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  hand_ = new QComboBox;
  hand_->setObjectName("hand");
  hand_->setAccessibleName(tr("How the member countersigns"));
  hand_->addItem(tr("choose"), choose);
  hand_->addItem(tr("with their PIN"), by_pin);
  hand_->addItem(tr("with their card"), by_card);
  offer({});
  pin_ = new QLineEdit;
  pin_->setObjectName("member_pin");
  pin_->setEchoMode(QLineEdit::Password);
  pin_->setPlaceholderText(tr("the member's own PIN"));
  pin_->setAccessibleName(tr("The member's own PIN"));
  form_ = new QLineEdit;
  form_->setObjectName("countersigned_form");
  form_->setMaxLength(12);
  form_->setPlaceholderText(tr("number at its foot"));
  form_->setAccessibleName(tr("Number of the printed sheet that the member signed"));
  card_words_ = new QLabel;
  card_words_->setObjectName("member_card");
  card_words_->setProperty("role", "quiet");
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(8);
  hand_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  hand_->setMinimumContentsLength(12);
  across->addWidget(hand_, 1);
  across->addWidget(pin_, 1);
  across->addWidget(form_, 1);
  across->addWidget(card_words_, 1);
  setFocusProxy(hand_);
  connect(hand_, &QComboBox::currentIndexChanged, this, &CountersignFields::show_choice);
  for (QLineEdit* field : {pin_, form_})
    connect(field, &QLineEdit::returnPressed, this, &CountersignFields::done);
  show_choice();
}

void CountersignFields::offer(Offers offers) {
  for (const auto& [choice, words, offered] :
       {std::tuple(on_paper, tr("on the printed sheet"), offers.paper),
        std::tuple(not_at_all, tr("not countersigned"), offers.not_at_all)}) {
    const int at = hand_->findData(choice);
    if (offered && at < 0) hand_->addItem(words, choice);
    if (!offered && at >= 0) hand_->removeItem(at);
  }
}

void CountersignFields::set_member(const PersonId& person) {
  const PersonId joined = session_.store().joined(person);
  if (joined == person_) return;
  person_ = joined;
  clear();
  const Choice first = session_.store().has_pin(person_)                                      ? by_pin
                       : has_card(session_, person_, [](const std::string&) { return true; }) ? by_card
                                                                                              : choose;
  hand_->setCurrentIndex(hand_->findData(first));
}

void CountersignFields::clear() {
  pin_->clear();
  form_->clear();
  card_.clear();
  show_choice();
}

bool CountersignFields::take_card(const QString& card) {
  if (!has_card(session_, person_, [&](const std::string& one) { return one == card.toStdString(); }))
    return false;
  card_ = card;
  hand_->setCurrentIndex(hand_->findData(by_card));
  show_choice();
  return true;
}

void CountersignFields::show_choice() {
  pin_->setVisible(chosen() == by_pin);
  form_->setVisible(chosen() == on_paper);
  card_words_->setVisible(chosen() == by_card);
  card_words_->setText(card_.isEmpty() ? tr("hold it to the reader") : tr("held to the reader"));
  emit changed();
}

std::optional<Problem> CountersignFields::missing() const {
  const auto problem = [](const QString& what, const QString& remedy) {
    return Problem{tr("the member").toStdString(), what.toStdString(), remedy.toStdString()};
  };
  const QString name = name_of(session_, person_);
  switch (chosen()) {
    case choose:
      return problem(tr("It is missing how %1 countersigns").arg(name),
                     tr("Choose a PIN, a card, the printed sheet, or that it is not countersigned"));
    case by_pin:
      if (!session_.store().has_pin(person_))
        return problem(tr("%1 has no PIN yet").arg(name),
                       tr("Let them choose one with Ctrl+Shift+P, or countersign in another way"));
      if (pin_->text().isEmpty())
        return problem(tr("%1 has not countersigned yet").arg(name),
                       tr("%1 types their own PIN: they were shown this machine's cautions").arg(name));
      return std::nullopt;
    case by_card:
      if (card_.isEmpty())
        return problem(
            tr("%1 has not countersigned yet").arg(name),
            tr("%1 holds their card to the reader: they were shown this machine's cautions").arg(name));
      return std::nullopt;
    case on_paper:
      if (form_->text().trimmed().isEmpty())
        return problem(
            tr("The number of the sheet that %1 signed is missing").arg(name),
            tr("Print a blank sheet with Ctrl+P, let them sign it, and type the number at its foot"));
      return std::nullopt;
    case not_at_all:
      return std::nullopt;
  }
  return std::nullopt;
}

std::optional<db::Countersign> CountersignFields::value() const {
  switch (chosen()) {
    case by_pin:
      return db::Countersign{db::Hand::pin, pin_->text().toStdString()};
    case by_card:
      return db::Countersign{db::Hand::card, card_.toStdString()};
    case on_paper:
      return db::Countersign{db::Hand::paper, form_->text().trimmed().toUpper().toStdString()};
    case choose:
    case not_at_all:
      return std::nullopt;
  }
  return std::nullopt;
}

void CountersignFields::take_cursor() {
  if (chosen() == by_pin)
    pin_->setFocus();
  else if (chosen() == on_paper)
    form_->setFocus();
  else
    hand_->setFocus();
}

}  // namespace wm::app
