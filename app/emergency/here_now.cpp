#include "app/emergency/here_now.h"

#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "app/desk/answer.h"
#include "app/desk/shop_lines.h"
#include "app/widgets/blocks.h"
#include "app/words/words.h"

namespace wm::app {

HereNow::HereNow(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), column_(new QVBoxLayout(this)) {
  setObjectName("here_now");
  setProperty("role", "paper");
  column_->setContentsMargins(18, 14, 18, 16);
  column_->setSpacing(4);
}

void HereNow::say(const QString& title, const QStringList& lines, const QString& none) {
  add_block(*column_, title, lines.isEmpty() ? QStringList{none} : lines);
  column_->addSpacing(6);
}

void HereNow::refresh(const ShopNow& shop) {
  empty_column(*column_);
  const auto name = [&](const PersonId& id) { return person_name(session_.person(id)); };
  QStringList present;
  for (const PersonId& id : shop.present)
    present << (std::ranges::binary_search(shop.staff, id) ? tr("%1 (on duty)").arg(name(id)) : name(id));
  if (!present.isEmpty()) present = {present.join(tr(", ", "between names"))};
  say(tr("In the building, as noted: %n of the shop's", nullptr, static_cast<int>(shop.present.size())),
      present, tr("Nobody has been noted as here."));
  say(tr("Visitors in the building: %n", nullptr, static_cast<int>(shop.visitors.size())),
      visitor_lines(shop.visitors, name, session_.zone()), tr("No visitor has been noted."));
  auto* doubt = new QLabel(tr("Whoever came in without being noted is not here: look in every room."));
  doubt->setProperty("role", "quiet");
  doubt->setWordWrap(true);
  column_->addWidget(doubt);
  column_->addSpacing(6);
  say(tr("Out of service"), out_lines(shop, name, session_.zone()), tr("No machine is out of service."));
  offer(shop);
}

/// Only where whoever sits here may.
void HereNow::offer(const ShopNow& shop) {
  for (const db::LockOn& lock : shop.out) {
    if (!session_.permitted(db::EnterFact{Release{lock.lockout}})) continue;
    auto* off = new QPushButton(tr("Take the padlock off: %1…").arg(unit_words(shop, lock.machine)));
    off->setObjectName("take_off");
    connect(off, &QPushButton::clicked, this, [this, machine = lock.machine] {
      Place place;
      place.page = "machines";
      place.machine = machine;
      emit go(place);
    });
    column_->addWidget(off);
  }
}

}  // namespace wm::app
