#include "app/frame/side.h"

#include <QFormLayout>
#include <QVBoxLayout>

#include "app/emergency/cover.h"
#include "app/frame/pages.h"
#include "app/theme/theme.h"
#include "app/widgets/wrapped_button.h"
#include "app/words/words.h"

namespace wm::app {

Side::Side(Session& session, QWidget* parent)
    : QFrame(parent),
      session_(session),
      on_(new DateField(tr("today"))),
      known_(new DateField(tr("now"))),
      who_(new QLabel),
      hand_over_(new KeyButton({}, Qt::Key_F10)) {
  setObjectName("side");
  setFixedWidth(164);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 18, 0, 14);
  column->setSpacing(0);
  auto* shop = new QLabel(QString::fromStdString(session.store().details().name));
  shop->setFont(type(TypeSize::body, true));
  shop->setWordWrap(true);
  shop->setContentsMargins(18, 0, 12, 12);
  column->addWidget(shop);
  column->addWidget(pages_list());
  column->addStretch(1);
  column->addWidget(dates());
  column->addStretch(1);
  column->addWidget(seat());
  connect(&session, &Session::seated_changed, this, &Side::show_seat);
  connect(&session, &Session::changed, this, &Side::show_dates);
  connect(&session, &Session::changed, this, &Side::show_pages);
  show_pages();
  show_seat();
}

QWidget* Side::pages_list() {
  auto* list = new QWidget;
  auto* column = new QVBoxLayout(list);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  for (const PageEntry& entry : pages()) {
    auto* link = new PageLink(page_title(entry), entry.key);
    const QString id = QLatin1String(entry.id);
    link->setObjectName("page_" + id);
    connect(link, &PageLink::clicked, this, [this, id] { emit go(id); });
    links_.emplace_back(id, link);
    column->addWidget(link);
  }
  return list;
}

QWidget* Side::dates() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(18, 0, 16, 0);
  column->setSpacing(4);
  const std::pair<QString, DateField*> fields[] = {{tr("On the day"), on_}, {tr("As known on"), known_}};
  for (const auto& [words, field] : fields) {
    auto* label = new QLabel(words);
    label->setProperty("role", "quiet");
    label->setBuddy(field);
    field->setAccessibleName(words);
    field->set_today(session_.zone().day(session_.now()));
    column->addWidget(label);
    column->addWidget(field);
    connect(field, &DateField::day_changed, this, &Side::set_dates);
    connect(field, &DateField::refused, this, &Side::refused);
  }
  on_->setObjectName("asked_on");
  known_->setObjectName("as_known");
  return box;
}

QWidget* Side::seat() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(10, 0, 10, 0);
  column->setSpacing(6);
  auto* hurt = new WrappedButton(tr("Somebody hurt, machine broken"), emergency_key);
  hurt->setObjectName("emergency");
  connect(hurt, &WrappedButton::clicked, this, [this] { emit go("emergency"); });
  column->addWidget(hurt);
  column->addSpacing(12);
  who_->setWordWrap(true);
  who_->setObjectName("who_sits");
  column->addWidget(who_);
  hand_over_->setObjectName("hand_over");
  connect(hand_over_, &KeyButton::clicked, this, [this] {
    if (session_.seated()) session_.hand_over();
    emit go("seat");
  });
  column->addWidget(hand_over_);
  return box;
}

void Side::show_current(const QString& page) {
  for (auto& [id, link] : links_) {
    link->setAutoExclusive(false);
    link->setChecked(id == page);
    link->setAutoExclusive(true);
  }
}

void Side::show_pages() {
  for (const PageEntry& entry : pages())
    for (auto& [id, link] : links_)
      if (id == QLatin1String(entry.id)) link->setVisible(is_shown(entry, session_.store()));
}

void Side::show_seat() {
  const auto& seated = session_.seated();
  who_->setFont(type(TypeSize::body, seated.has_value()));
  who_->setText(seated ? person_name(seated) : tr("Nobody sits here"));
  hand_over_->say(seated ? tr("Hand over") : tr("Sit down"));
}

void Side::set_dates() {
  const Zone& zone = session_.zone();
  // A day asked about is meant as a whole: its last second is asked, so that what happened on it counts.
  const auto end_of = [&](std::optional<Day> day) -> std::optional<Instant> {
    return day ? std::optional(zone.start(*day + 1) - 1) : std::nullopt;
  };
  session_.set_known(end_of(known_->day()));
  session_.set_asked_at(end_of(on_->day()));
}

void Side::show_dates() {
  const auto day = [&](std::optional<Instant> t) -> std::optional<Day> {
    return t ? std::optional(session_.zone().day(*t)) : std::nullopt;
  };
  if (on_->day() != day(session_.asked_at())) on_->set_day(day(session_.asked_at()));
  if (known_->day() != day(session_.known())) known_->set_day(day(session_.known()));
}

}  // namespace wm::app
