#include "app/checkouts/countersign_later.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/checkouts/countersign_fields.h"
#include "app/diary/bookings.h"
#include "app/diary/not_countersigned.h"
#include "app/widgets/key_button.h"

namespace wm::app {

CountersignLater::CountersignLater(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), missing_(new QLabel), fields_(new CountersignFields(session)) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 2, 0, 2);
  down->setSpacing(4);
  missing_->setObjectName("not_countersigned");
  missing_->setProperty("role", "sentence");
  missing_->setWordWrap(true);
  fields_->setObjectName("countersign_later");
  pin_ = new KeyButton(tr("Choose their PIN"), QKeySequence("Ctrl+Shift+P"));
  pin_->setObjectName("choose_pin_later");
  auto* enter = new KeyButton(tr("Countersign"), Qt::CTRL | Qt::Key_Return);
  enter->setObjectName("enter_countersign");
  auto* across = new QHBoxLayout;
  across->setSpacing(8);
  across->addWidget(fields_, 1);
  across->addWidget(pin_);
  across->addWidget(enter);
  down->addWidget(missing_);
  down->addLayout(across);
  connect(fields_, &CountersignFields::done, this, &CountersignLater::enter);
  connect(enter, &QPushButton::clicked, this, &CountersignLater::enter);
  connect(pin_, &QPushButton::clicked, this, &CountersignLater::choose_pin);
  hide();
}

void CountersignLater::show_missing(const RecordId& checkout) {
  const auto missing = session_.seated() ? not_countersigned(session_) : std::vector<NotCountersigned>();
  const auto found =
      std::ranges::find(missing, checkout, [](const NotCountersigned& one) { return one.entry->id; });
  if (checkout != checkout_) fields_->set_member({});
  checkout_ = checkout;
  setVisible(found != missing.end());
  if (found == missing.end()) return;
  member_ = found->checkout->person;
  missing_->setText(
      tr("%1 has not countersigned it: nothing says that they were shown this machine's cautions.")
          .arg(name_of(session_, member_)));
  fields_->offer({.paper = session_.role() == db::Role::manager, .not_at_all = false});
  fields_->set_member(member_);
  pin_->setVisible(!session_.store().has_pin(member_));
}

bool CountersignLater::take_card(const QString& card) { return isVisible() && fields_->take_card(card); }

void CountersignLater::take_cursor() { fields_->take_cursor(); }

void CountersignLater::enter() {
  if (const auto missing = fields_->missing()) {
    emit tell_problem(*missing);
    return fields_->take_cursor();
  }
  const auto by = fields_->value();
  if (!by) return;
  const bool paper = by->hand == db::Hand::paper;
  const db::Action action =
      paper ? db::Action(db::EnterShopFact{db::Countersigned{checkout_, member_, by->hand, by->proof}})
            : db::Action(db::CountersignCheckout{checkout_, *by});
  fields_->clear();
  const QString said =
      tr("%1 has countersigned: they were shown this machine's cautions.").arg(name_of(session_, member_));
  if (const auto done = session_.commit(action, std::nullopt, {}, paper); !done) {
    emit tell_problem(done.error());
    return fields_->take_cursor();
  }
  emit tell(said);
}

}  // namespace wm::app
