#include "app/people/person_form.h"

#include <algorithm>

#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

std::string text(const QLineEdit* field) { return field->text().simplified().toStdString(); }

void fill(QLineEdit* field, const std::string& value) { field->setText(QString::fromStdString(value)); }

QString alike_words(Alike alike) {
  switch (alike) {
    case Alike::same_name:
      return PersonForm::tr("same name");
    case Alike::similar_name:
      return PersonForm::tr("similar name");
    case Alike::same_number:
      return PersonForm::tr("same number");
    case Alike::same_card:
      return PersonForm::tr("same card");
    case Alike::same_phone:
      return PersonForm::tr("same phone");
    case Alike::same_email:
      return PersonForm::tr("same email");
  }
  return {};
}

constexpr std::size_t most_shown = 3;

}  // namespace

PersonForm::PersonForm(std::vector<KnownPerson> known, const std::optional<db::Person>& before, Day today,
                       QWidget* parent)
    : Form(before ? tr("Correct details") : tr("New person"), tr("Save"), parent),
      known_(std::move(known)),
      before_(before.value_or(db::Person{})),
      today_(today) {
  std::tie(given_, family_) = two_lines(tr("Given name"), "given", tr("Family name"), "family");
  std::tie(nickname_, number_) = two_lines(tr("Called, if not by it"), "nickname", tr("Number"), "number");
  card_ = line(tr("Card"), "card");
  if (!before) {
    born_ = new DateField(tr("day, month and year"));
    born_->setObjectName("born");
    born_->set_today(today);
    add_field(tr("Birth date, kept from sight"), born_);
    connect(born_, &QLineEdit::textChanged, this, &PersonForm::look_for_doubles);
    connect(born_, &QLineEdit::returnPressed, this, &Form::saved);
  }
  phone_ = line(tr("Phone"), "phone");
  email_ = line(tr("Email"), "email");
  emergency_ = line(tr("In an emergency, call"), "emergency");
  fill(given_, before_.given);
  fill(family_, before_.family);
  fill(nickname_, before_.nickname);
  fill(number_, before_.number);
  fill(card_, before_.card);
  fill(email_, before_.email);
  fill(phone_, before_.phone);
  fill(emergency_, before_.emergency_contact);
  found_ = say({});
  found_->setObjectName("doubles");
  take_ = new KeyButton(tr("It is the first of these"), QKeySequence("Ctrl+D"));
  take_->setObjectName("take_double");
  add(take_);
  connect(take_, &QPushButton::clicked, this, [this] {
    if (!doubles_.empty()) emit take_double(doubles_.front().person);
  });
  for (QLineEdit* field : {given_, family_, nickname_, number_, card_, email_, phone_})
    connect(field, &QLineEdit::textChanged, this, &PersonForm::look_for_doubles);
  look_for_doubles();
}

db::Person PersonForm::person() const {
  db::Person person = before_;
  person.given = text(given_);
  person.family = text(family_);
  person.nickname = text(nickname_);
  person.number = text(number_);
  person.card = text(card_);
  person.email = text(email_);
  person.phone = text(phone_);
  person.emergency_contact = text(emergency_);
  return person;
}

std::optional<Day> PersonForm::born() const {
  return born_ ? read_day(born_->text(), civil(today_).year) : std::nullopt;
}

std::optional<Problem> PersonForm::mistake() const {
  const db::Person now = person();
  if (now.given.empty() && now.family.empty())
    return Problem{tr("name").toStdString(), tr("There is no name yet").toStdString(),
                   tr("Type a given name, a family name or both").toStdString()};
  if (born_ && !born_->is_good())
    return Problem{tr("birth date").toStdString(), tr("The birth date is no date").toStdString(),
                   tr("Type it like 14 March 1998, or leave it empty").toStdString()};
  return std::nullopt;
}

void PersonForm::look_for_doubles() {
  doubles_ = likely_doubles(person(), born(), known_);
  QStringList lines;
  for (std::size_t i = 0; i < doubles_.size() && i < most_shown; ++i) lines << double_line(doubles_[i]);
  if (doubles_.size() > most_shown) lines << tr("and %1 more").arg(doubles_.size() - most_shown);
  if (!lines.isEmpty()) lines.prepend(tr("Perhaps here already:"));
  found_->setText(lines.join('\n'));
  found_->setVisible(!lines.isEmpty());
  take_->setVisible(!lines.isEmpty() && born_);
}

QString PersonForm::double_line(const LikelyDouble& found) const {
  const auto known =
      std::ranges::find(known_, found.person, [](const KnownPerson& k) { return k.person.id; });
  QStringList why;
  for (const Alike alike : found.alike) why << alike_words(alike);
  const QString number = QString::fromStdString(known->person.number);
  const QString who = number.isEmpty() ? person_name(known->person)
                                       : tr("%1, %2", "name, number").arg(person_name(known->person), number);
  return tr("%1: %2", "who, why").arg(who, why.join(", "));
}

}  // namespace wm::app
