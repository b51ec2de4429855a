#include "app/diary/diary_page.h"

#include <QApplication>
#include <QDate>
#include <QKeyEvent>
#include <QLocale>
#include <algorithm>

#include "app/diary/day_strip.h"
#include "app/diary/fit_view.h"
#include "app/diary/slots.h"
#include "app/diary/trouble.h"
#include "app/diary/waiting_list.h"
#include "app/diary/why_words.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/words/words.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

constexpr int days_shown = 14;

std::vector<TargetName> targets_now(Session& session) {
  const Rulebook* rulebook = session.decider().in_force(session.present());
  return rulebook ? targets_of(*rulebook) : std::vector<TargetName>{};
}

/// What the person is likeliest to be booked for: what they wait for, or else the first machine on which a
/// check-out is the last thing missing.
TargetName likeliest(Session& session, const PersonId& person) {
  for (const WaitingLine& line : waiting(session))
    if (line.waiting.person == person) return line.waiting.target;
  Decider& decider = session.decider(std::nullopt);
  for (const TargetName& target : targets_now(session))
    if (decider.rung(person, target, session.now()) == Rung::supervised &&
        ready_for_checkout(decider.standing(person, target, session.now())))
      return target;
  return {};
}

}  // namespace

QString short_time(Instant t, const Zone& zone) {
  const CivilDate c = civil(zone.day(t));
  const QString day = QLocale().toString(QDate(c.year, c.month, c.day), DiaryPage::tr("ddd d MMM"));
  return DiaryPage::tr("%1, %2", "a day and a time").arg(day, clock_time(t, zone));
}

QString day_and_time(const Interval& when, const Zone& zone, Session& session) {
  return DiaryPage::tr("%1, %2", "a day and a time")
      .arg(day_heading(zone.day(when.from), session), clock_time(when.from, zone));
}

Wish DiaryPage::wish() const {
  return {member_, chosen_target_, static_cast<db::Purpose>(purpose_->currentData().toInt())};
}

Day DiaryPage::first() const { return first_.value_or(session().zone().day(session().present())); }

void DiaryPage::open(const Place& place) {
  if (!place.person.empty()) {
    member_ = place.person;
    person_->set_person(place.person);
    chosen_target_ = place.target.empty() ? likeliest(session(), place.person) : place.target;
  }
  if (!place.record.empty())
    for (const db::Entry& entry : session().store().entries())
      if (const auto* fact = std::get_if<db::ShopFact>(&entry.fact); fact && entry.id == place.record)
        if (const auto* booking = std::get_if<db::Booking>(fact))
          first_ = session().zone().day(booking->from);
  list_->setCurrentIndex({});
  views_->setCurrentIndex(0);
  refresh();
  if (!place.record.empty()) select_again(place.record, std::nullopt);
  person_->setFocus();
  person_->field()->selectAll();
}

void DiaryPage::refresh() {
  day_->set_today(session().zone().day(session().now()));
  fill_targets();
  fill_list();
  const std::vector<WaitingLine> lines = waiting(session());
  waiting_->set(session(), lines);
  waiting_heading_->setText(WaitingList::summary(session(), lines));
  show_selected();
}

void DiaryPage::fill_targets() {
  const std::vector<TargetName> targets = targets_now(session());
  if (static_cast<std::size_t>(target_->count()) != targets.size() + 1) {
    target_->clear();
    target_->addItem(tr("choose a machine"), QString());
    for (const TargetName& target : targets)
      target_->addItem(target_label(target), QString::fromStdString(target));
  }
  target_->setCurrentIndex(std::max(0, target_->findData(QString::fromStdString(chosen_target_))));
}

void DiaryPage::fill_list() {
  const DiaryRow* before = selected();
  const auto booking = before && before->booking ? std::optional(before->booking->id) : std::nullopt;
  const auto slot = before ? before->slot : std::nullopt;
  // A booking is for real: what was known then is only looked at.
  rows_->set(diary_rows(session(), {session().known() ? Wish{} : wish(), first(), days_shown, moved_}));
  delegate_->measure();
  list_->doItemsLayout();
  say_what_is_shown(std::any_of(rows_->rows().begin(), rows_->rows().end(),
                                [](const DiaryRow& row) { return row.kind == DiaryRow::Kind::slot; }));
  select_again(booking, slot);
}

/// How many of the bookings are no longer possible, those after the days that are shown too.
QString DiaryPage::words_of_wrong() {
  const Instant end = session().zone().start(first() + days_shown);
  const std::vector<Trouble> all = troubles(session(), end);
  const auto later =
      std::ranges::count_if(all, [&](const Trouble& each) { return each.line.booking.from >= end; });
  const auto here = std::ranges::count_if(rows_->rows(), [](const DiaryRow& row) { return !!row.trouble; });
  QString out;
  if (here > 0) out = tr("No longer possible: %1 of these bookings.").arg(here) + ' ';
  if (later > 0) out += tr("No longer possible after these days: %1.").arg(later) + ' ';
  return out;
}

void DiaryPage::say_what_is_shown(bool some_slot) {
  heading_->setText(
      tr("%1 to %2", "from a day to a day")
          .arg(day_heading(first(), session()), day_heading(first() + (days_shown - 1), session())));
  const bool asked = !member_.empty() && !chosen_target_.empty();
  const QString name = name_of(session(), member_);
  why_not_->hide();
  if (session().known()) {
    under_->setText(tr("What was booked, as known then."));
  } else if (member_.empty()) {
    under_->setText(words_of_wrong() +
                    tr("What is booked. Choose a member and a machine to see the times that fit."));
  } else if (!asked) {
    under_->setText(tr("What is booked. Choose a machine to see the times that fit %1.").arg(name));
  } else if (some_slot) {
    under_->setText((moved_.empty()
                         ? tr("Times that fit %1 on %2, among what is booked")
                         : tr("Choose another time for %1 on %2, or somebody to change places with"))
                        .arg(name, target_label(chosen_target_)) +
                    QStringLiteral(". ") + standing_of_member());
  } else {
    under_->setText(tr("Nothing fits %1 on %2 in these days.").arg(name, target_label(chosen_target_)));
    why_not_->setText(
        none_words(session(), slot_question(session(), wish(), first(), days_shown, moved_), wish()));
    why_not_->show();
  }
}

void DiaryPage::select_again(const std::optional<RecordId>& booking, const std::optional<Slot>& slot) {
  int fallback = -1;
  const std::vector<DiaryRow>& rows = rows_->rows();
  for (int i = 0; i < static_cast<int>(rows.size()); ++i) {
    const DiaryRow& row = rows[static_cast<std::size_t>(i)];
    const bool same_booking = booking && row.booking && row.booking->id == *booking;
    const bool same_slot = slot && row.slot && row.slot->when == slot->when &&
                           row.slot->assessor == slot->assessor && row.slot->second == slot->second;
    if (same_booking || same_slot) {
      list_->setCurrentIndex(rows_->index(i));
      return;
    }
    // Otherwise the first time that fits, or the first booking.
    if (row.slot && (fallback < 0 || !rows[static_cast<std::size_t>(fallback)].slot)) fallback = i;
    if (row.booking && fallback < 0) fallback = i;
  }
  if (fallback >= 0) list_->setCurrentIndex(rows_->index(fallback));
}

const DiaryRow* DiaryPage::selected() const { return rows_->row(list_->currentIndex()); }

void DiaryPage::show_selected() {
  const DiaryRow* row = selected();
  const bool slot = row && row->slot;
  const Day day = row ? row->day : first();
  strip_heading_->setText(day_heading(day, session()));
  strip_->show_day(session().zone(), day,
                   day_bands(session(), day, chosen_target_, slot ? row->slot : std::nullopt));
  show_life_buttons(row);
  const bool asked = !member_.empty() && !chosen_target_.empty() && !session().known();
  wait_->setEnabled(asked);
  fit_everyone_->setEnabled(!session().known());
  wait_->say(asked && waiting_of(session(), member_, chosen_target_) ? tr("Take off the waiting list")
                                                                     : tr("Put on the waiting list"));
  show_turnout_buttons(row && row->booking && !session().known() ? &*row->booking : nullptr);
}

void DiaryPage::show_turnout_buttons(const BookingLine* line) {
  const Zone& zone = session().zone();
  const bool begun = line && zone.day(line->booking.from) <= zone.day(session().now());
  for (KeyButton* button : {arrived_, late_, not_come_}) button->setVisible(begun && !line->signed_as);
  cancel_->setVisible(line && !line->signed_as);
  if (!line) reason_->hide();
}

void DiaryPage::choose_person(const PersonId& person) {
  member_ = person;
  moved_.clear();
  chosen_target_ = person.empty() ? TargetName() : likeliest(session(), person);
  list_->setCurrentIndex({});  // another question: its first answer is chosen
  refresh();
}

void DiaryPage::choose_target(const TargetName& target) {
  chosen_target_ = target;
  moved_.clear();
  list_->setCurrentIndex({});
  refresh();
}

bool DiaryPage::enter(db::ShopFact fact, const QString& done) {
  const auto committed = session().commit(db::EnterShopFact{std::move(fact)});
  if (!committed) {
    emit tell_problem(committed.error());
    return false;
  }
  emit tell(done);
  return true;
}

void DiaryPage::book() {
  if (views_->currentWidget() == fit_) return;
  const DiaryRow* row = selected();
  if (!row) return;
  // Copies: entering something fills the list anew.
  if (row->slot) {
    const Slot slot = *row->slot;
    const auto moved = moved_line();
    return book_slot(slot, moved ? moved->held_to(slot.when.from) : std::nullopt);
  }
  if (!row->booking) return;
  if (may_swap(*row)) return swap(BookingLine(*row->booking));
  if (row->booking->held) confirm(BookingLine(*row->booking));
}

void DiaryPage::book_slot(const Slot& slot, std::optional<Instant> held_through) {
  const PersonId person = member_;
  db::Booking booking = booking_of(slot, wish());
  booking.held_through = held_through;
  booking.instead_of = moved_;
  if (!still_fits(booking)) {
    refresh();
    emit tell_problem({tr("that time").toStdString(),
                       tr("It does not fit any more: somebody has booked meanwhile, or "
                          "it has begun")
                           .toStdString(),
                       tr("Choose another from the list, which is up to date now").toStdString()});
    return;
  }
  const auto committed = session().commit(db::EnterShopFact{booking});
  if (!committed) {
    emit tell_problem(committed.error());
    return;
  }
  const bool moved = !moved_.empty();
  moved_.clear();
  refresh();
  if (!committed->entries.empty()) select_again(committed->entries.front().id, std::nullopt);
  const QString said =
      moved          ? tr("%1 is moved: %2, %3, with %4.", "member; day and time; machine; assessor")
      : held_through ? tr("%1 has a time held: %2, %3, with %4.", "member; day and time; machine; assessor")
                     : tr("%1 is booked: %2, %3, with %4.", "member; day and time; machine; assessor");
  emit tell(said.arg(name_of(session(), person), day_and_time(slot.when, session().zone(), session()),
                     unit_label(units(session()), slot.unit),
                     names_of(session(), slot.assessor, slot.second)));
}

bool DiaryPage::still_fits(const db::Booking& booking) {
  // The day after too: it may end there.
  const SlotQuestion question = slot_question(session(), {booking.person, booking.target, booking.purpose},
                                              session().zone().day(booking.from), 2, booking.instead_of);
  const std::vector<Slot> now = fitting_units(question);
  return std::any_of(now.begin(), now.end(), [&](const Slot& each) {
    return each.when == Interval{booking.from, booking.to} && each.assessor == booking.assessor &&
           each.second == booking.second && each.unit == booking.machine;
  });
}

void DiaryPage::fit_everyone() {
  if (session().known()) return;
  views_->setCurrentWidget(fit_);
  fit_->begin();
}

void DiaryPage::book_all(const std::vector<db::Booking>& ticked) {
  std::size_t booked = 0;
  for (const db::Booking& each : ticked) {
    if (!still_fits(each)) continue;
    const auto committed = session().commit(db::EnterShopFact{each});
    if (!committed) {
      emit tell_problem(committed.error());
      break;
    }
    ++booked;
  }
  back_to_the_diary();
  if (booked == ticked.size())
    emit tell(booked == 1 ? tr("1 one-on-one is booked.") : tr("%1 one-on-ones are booked.").arg(booked));
  else
    emit tell(tr("%1 of %2 are booked; the others do not fit any more, or could not be entered.")
                  .arg(booked)
                  .arg(ticked.size()));
}

void DiaryPage::back_to_the_diary() {
  views_->setCurrentIndex(0);
  refresh();
  person_->setFocus();
}

void DiaryPage::turned_out(db::Turnout turnout) {
  const DiaryRow* row = selected();
  if (!row || !row->booking) return;
  const QString name = name_of(session(), row->booking->booking.person);
  const QString done = turnout == db::Turnout::arrived ? tr("%1 has arrived.").arg(name)
                       : turnout == db::Turnout::late  ? tr("%1 is late.").arg(name)
                                                       : tr("%1 has not come.").arg(name);
  if (enter(db::Attendance{row->booking->id, turnout}, done)) refresh();
}

void DiaryPage::ask_reason() {
  reason_->show();
  reason_->clear();
  reason_->setFocus();
}

void DiaryPage::cancel() {
  const DiaryRow* row = selected();
  if (!row || !row->booking) return;
  const QString reason = reason_->text().trimmed();
  if (reason.isEmpty()) {
    emit tell_problem({tr("the reason").toStdString(),
                       tr("A cancelled booking keeps its reason").toStdString(),
                       tr("Write a word or two, then press Enter").toStdString()});
    return;
  }
  const db::Booking booking = row->booking->booking;
  const db::Cancel fact{row->booking->id, reason.toStdString()};
  QString said = tr("The booking of %1 is cancelled: %2.").arg(name_of(session(), booking.person), reason);
  if (!enter(fact, said)) return;
  if (const auto waits = waiting_of(session(), booking.person, booking.target))
    emit tell(
        said + ' ' +
        tr("They are on the waiting list again, since %1.").arg(short_day(waits->since, session().zone())));
  reason_->hide();
  list_->setFocus();
  refresh();
}

void DiaryPage::wait_or_not() {
  const PersonId person = member_;
  if (person.empty() || chosen_target_.empty()) return;
  const QString name = name_of(session(), person), machine = target_label(chosen_target_);
  const auto line = waiting_of(session(), person, chosen_target_);
  const bool done =
      line ? enter(db::WaitingEnd{line->id}, tr("%1 is off the waiting list for %2.").arg(name, machine))
           : enter(db::Waiting{person, chosen_target_},
                   tr("%1 is on the waiting list for %2.").arg(name, machine));
  if (done) refresh();
}

bool DiaryPage::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return Page::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (watched == reason_ && key->key() == Qt::Key_Escape) {
    reason_->hide();
    list_->setFocus();
    return true;
  }
  // From the field at the top the arrows move through the list below, so that a hand need not leave the keys.
  const bool moves = key->key() == Qt::Key_Up || key->key() == Qt::Key_Down || key->key() == Qt::Key_PageUp ||
                     key->key() == Qt::Key_PageDown;
  if (watched == person_->field() && moves && person_->person()) {
    QCoreApplication::sendEvent(list_, event);
    return true;
  }
  return Page::eventFilter(watched, event);
}

}  // namespace wm::app
