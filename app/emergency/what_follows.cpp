#include "app/emergency/what_follows.h"

#include <QTimer>
#include <algorithm>
#include <ranges>
#include <set>

#include "app/desk/answer.h"
#include "app/diary/diary_rows.h"
#include "app/diary/trouble.h"
#include "app/lists/answer_reader.h"
#include "app/theme/theme.h"
#include "app/widgets/blocks.h"
#include "app/words/standing_words.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

constexpr std::size_t most_told = 6;
constexpr int most_pauses = 3;

}  // namespace

WhatFollows::WhatFollows(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), column_(new QVBoxLayout(this)) {
  setObjectName("what_follows");
  setProperty("role", "paper");
  column_->setContentsMargins(18, 14, 18, 16);
  column_->setSpacing(5);
}

void WhatFollows::show_of(Recorded what, const ShopNow& shop) {
  what_ = std::move(what);
  shown_ = true;
  write(shop);
  // Nothing that takes something away is pressed by a hand that is still typing.
  findChild<QWidget*>("follow_over")->setFocus();
}

void WhatFollows::refresh(const ShopNow& shop) {
  if (shown_) write(shop);
}

void WhatFollows::say(const QString& title, const QStringList& lines) {
  if (lines.isEmpty()) return;
  column_->addSpacing(6);
  add_block(*column_, title, lines);
}

void WhatFollows::button(const QString& name, const QString& words, const QKeySequence& key,
                         std::function<void()> act) {
  auto* made = new KeyButton(words, key);
  made->setObjectName(name);
  // Later, since what it does draws all of this anew.
  connect(made, &KeyButton::clicked, this, [this, act] { QTimer::singleShot(0, this, act); });
  column_->addWidget(made);
  made->show();  // at once, so that its key is there
}

void WhatFollows::write(const ShopNow& shop) {
  empty_column(*column_);
  auto* top = new QLabel(heading(shop));
  top->setWordWrap(true);
  top->setFont(type(TypeSize::body, true));
  column_->addWidget(top);
  say(tr("What follows by the rules"), standings());
  say(tr("Still noted as at a machine"), at_machines(shop));
  say(tr("Bookings that are no longer possible"), bookings());
  if (what_.incident.severity != db::near_miss)
    say(tr("Outside this program"), {tr("Local law may ask for a report within hours: see the notice beside "
                                        "this desk. Keep the scene as it is.")});
  column_->addSpacing(8);
  offers(shop);
  column_->addStretch(1);
}

QString WhatFollows::heading(const ShopNow& shop) const {
  const QString where = unit_words(shop, what_.incident.machine);
  const QString when = short_time(what_.at, session_.zone());
  return what_.incident.severity == db::near_miss
             ? tr("Recorded: a near miss at %1, %2. Thank whoever reported it.").arg(where, when)
             : tr("Recorded: what happened at %1, %2.").arg(where, when);
}

/// Each standing that became another, as it is now.
QStringList WhatFollows::standings() const {
  QStringList lines;
  std::size_t more = 0;
  Decider& decider = session_.decider();
  for (const Shift& shift : what_.shifts) {
    if (shift.until && *shift.until <= session_.now()) continue;
    if (static_cast<std::size_t>(lines.size()) == most_told) {
      ++more;
      continue;
    }
    const Rung now = decider.rung(session_.joined(shift.person), shift.target, session_.now());
    const QString said =
        tr("%1: %2 %3 from now on.", "who, machine, only with a supervisor")
            .arg(person_name(session_.person(shift.person)), target_label(shift.target), standing_words(now));
    const QStringList left_open = restricted_now(session_, shift.person, shift.target);
    lines << (left_open.isEmpty() ? said : said + ' ' + restricted_sentence(left_open));
  }
  if (more > 0) lines << tr("And %n standings more: see the Journal.", nullptr, static_cast<int>(more));
  if (lines.isEmpty()) lines << tr("Nobody's standing changed.");
  return lines;
}

/// Of those whose standings changed, and at this machine.
QStringList WhatFollows::bookings() const {
  std::set<PersonId> changed;
  for (const Shift& shift : what_.shifts) changed.insert(session_.joined(shift.person));
  QStringList lines;
  int more = 0;
  for (const Trouble& each : troubles(session_, session_.now())) {
    const db::Booking& b = each.line.booking;
    const bool theirs = b.machine == what_.incident.machine ||
                        std::ranges::any_of(db::everybody_in(b), [&](const PersonId& one) {
                          return changed.contains(session_.joined(one));
                        });
    if (!theirs) continue;
    if (static_cast<std::size_t>(lines.size()) == most_told) {
      ++more;
      continue;
    }
    lines << tr("%1, %2: %3", "who; when; why, and what to do")
                 .arg(name_of(session_, b.person), short_time(b.from, session_.zone()),
                      problem_sentence(each.problem));
  }
  if (more > 0) lines << tr("And %n more: the Diary marks each of them.", nullptr, more);
  return lines;
}

std::vector<db::AtMachine> WhatFollows::still_at(const ShopNow& shop) const {
  std::set<PersonId> there;
  for (const db::Involved& one : what_.incident.people) there.insert(session_.joined(one.person));
  std::vector<db::AtMachine> found;
  std::ranges::copy_if(shop.at_machines, std::back_inserter(found), [&](const db::AtMachine& at) {
    return at.machine == what_.incident.machine || there.contains(at.person) ||
           (!at.supervisor.empty() && there.contains(at.supervisor));
  });
  return found;
}

QStringList WhatFollows::at_machines(const ShopNow& shop) const {
  QStringList lines;
  for (const db::AtMachine& at : still_at(shop)) {
    const QString who = name_of(session_, at.person), where = unit_words(shop, at.machine),
                  since = clock_time(at.since, session_.zone());
    lines
        << (at.supervisor.empty()
                ? tr("%1 at %2, since %3. Once they have left it, note it at the Desk.", "who, machine, time")
                      .arg(who, where, since)
                : tr("%1 at %2, since %3, supervised by %4. Where %4 cannot stay beside them, they stop now; "
                     "note at the Desk that they left it.",
                     "who, machine, time, supervisor")
                      .arg(who, where, since, name_of(session_, at.supervisor)));
  }
  return lines;
}

void WhatFollows::offers(const ShopNow& shop) {
  const MachineId& unit = what_.incident.machine;
  const QString machine = unit_words(shop, unit);
  const bool out = std::ranges::any_of(shop.out, [&](const db::LockOn& o) { return o.machine == unit; });
  if (out)
    say(tr("The machine"), {tr("%1 is out of service.").arg(machine)});
  else
    button("follow_out", tr("Put %1 out of service").arg(machine), Qt::CTRL | Qt::Key_4,
           [this, machine] { put_out(machine); });
  offer_pauses(Qt::Key_5);
  offer_desk(shop);
  button("follow_over", tr("Record something else"), Qt::CTRL | Qt::Key_9, [this] {
    shown_ = false;
    emit over();
  });
}

void WhatFollows::offer_desk(const ShopNow& shop) {
  std::set<PersonId> offered;
  int more = 0;
  const auto offer = [&](const PersonId& person, const TargetName& target, const QString& words) {
    if (!offered.insert(person).second) return;
    if (offered.size() > most_told) {
      ++more;
      return;
    }
    button("follow_desk", words, offered.size() == 1 ? QKeySequence(Qt::CTRL | Qt::Key_8) : QKeySequence(),
           [this, person, target] {
             Place place;
             place.page = "desk";
             place.person = person;
             place.target = target;
             emit go(place);
           });
  };
  for (const Shift& shift : what_.shifts) {
    const PersonId person = session_.joined(shift.person);
    offer(person, shift.target, tr("What %1 needs now").arg(name_of(session_, person)));
  }
  for (const db::AtMachine& at : still_at(shop))
    offer(at.person, at.target, tr("Note that %1 left the machine").arg(name_of(session_, at.person)));
  if (more > 0) say({}, {tr("And %n more: find them at the Desk.", nullptr, more)});
}

/// Nobody is paused for a near miss, and whoever is paused already is not offered.
void WhatFollows::offer_pauses(int key) {
  if (what_.incident.severity == db::near_miss) return;
  std::set<PersonId> offered;
  for (const db::Involved& one : what_.incident.people) {
    const PersonId person = session_.joined(one.person);
    const bool worked = one.part == Part::operating || one.part == Part::supervising;
    if (!worked || static_cast<int>(offered.size()) == most_pauses || !offered.insert(person).second)
      continue;
    if (!session_.decider().standing(person, what_.incident.target, session_.now()).suspensions.empty())
      continue;
    button("follow_pause", tr("Pause %1 for tonight").arg(person_name(session_.person(person))),
           QKeySequence(int(Qt::CTRL) | key++), [this, person] { pause(person); });
  }
}

void WhatFollows::put_out(const QString& machine) {
  const auto done =
      session_.commit(db::PutOutOfService{what_.incident.machine,
                                          {},
                                          {},
                                          tr("What happened there is looked into").toStdString(),
                                          session_.seated() ? session_.seated()->id : PersonId()});
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("%1 is out of service. Hang the tag on it now.").arg(machine));
}

void WhatFollows::pause(const PersonId& person) {
  const Day tonight = session_.zone().day(session_.now());
  const auto done = session_.commit(db::EnterFact{Suspend{person, Everything{}, tonight}});
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("%1 is paused on every machine through today.").arg(person_name(session_.person(person))));
}

}  // namespace wm::app
