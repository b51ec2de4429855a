#include "app/emergency/who_is_hurt.h"

#include <QLabel>
#include <QTimer>
#include <algorithm>

#include "app/emergency/block.h"
#include "app/theme/theme.h"
#include "app/widgets/blocks.h"
#include "app/words/words.h"

namespace wm::app {

WhoIsHurt::WhoIsHurt(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), who_(new PersonBox(session)), contacts_(new QVBoxLayout) {
  who_->field()->setObjectName("hurt_person");
  Block block(tr("Who is hurt"), this);
  block.field(tr("Name or number, then Enter: whom to call for them is shown at once"), who_);
  contacts_->setSpacing(2);
  block.column->addSpacing(6);
  block.column->addLayout(contacts_);
  block.column->addStretch(1);
  setFocusProxy(who_);
  connect(who_, &PersonBox::chosen, this, [this] {
    const auto person = who_->person();
    who_->set_person({});
    if (person) emit hurt(*person);
  });
}

void WhoIsHurt::show_people(std::vector<PersonId> people) {
  people_ = std::move(people);
  write();
}

void WhoIsHurt::refresh() {
  if (session_.seated()) noted_.clear();
  write();
}

void WhoIsHurt::write() {
  empty_column(*contacts_);
  const auto add = [&](const char* name, const QString& words, TypeSize size, bool heavy) {
    auto* label = new QLabel(words);
    label->setObjectName(name);
    label->setFont(type(size, heavy));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    contacts_->addWidget(label);
  };
  for (const PersonId& id : people_) {
    const auto person = session_.store().person(id);
    const QString contact = person ? QString::fromStdString(person->emergency_contact) : QString();
    if (contacts_->count() > 0) contacts_->addSpacing(8);
    add("hurt_name", tr("For %1 call", "whom to call follows").arg(person_name(person)), TypeSize::body,
        false);
    if (contact.isEmpty())
      add("hurt_contact", tr("Nobody is entered. Ask them, or whoever knows them."), TypeSize::body, true);
    else
      add("hurt_contact", contact, TypeSize::large, true);
  }
  if (!session_.seated() && isVisible()) note_shown();
}

/// Later, so that it is seen first: the store may be slow, or take nothing just now. What cannot be noted is
/// shown all the same, and nobody is told in this moment.
void WhoIsHurt::note_shown() {
  for (const PersonId& id : people_)
    if (noted_.insert(id).second)
      QTimer::singleShot(0, this, [this, id] {
        if (!session_.seated()) static_cast<void>(session_.commit(db::EnterShopFact{db::ContactShown{id}}));
      });
}

}  // namespace wm::app
