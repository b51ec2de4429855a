// What becomes of a booking on the Diary: held, for certain, moved, two that change places, reminders.
#include <QApplication>
#include <QClipboard>
#include <algorithm>

#include "app/diary/diary_page.h"
#include "app/diary/reminder.h"
#include "app/diary/trouble.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

constexpr int usual_hold_hours = 48;

/// The other's place, as a booking of `whose`: what was only held is not for certain by being moved.
db::Booking in_place_of(const BookingLine& whose, const BookingLine& other) {
  db::Booking out = whose.booking;
  out.assessor = other.booking.assessor;
  out.second = other.booking.second;
  out.machine = other.booking.machine;
  out.from = other.booking.from;
  out.to = other.booking.to;
  out.held_through = whose.held_to(out.from);
  out.instead_of = whose.id;
  return out;
}

}  // namespace

void DiaryPage::show_life_buttons(const DiaryRow* row) {
  const bool now = !session().known();
  const Slot* slot = now && row && row->slot ? &*row->slot : nullptr;
  const BookingLine* line = now && row && row->booking ? &*row->booking : nullptr;
  const bool swaps = now && row && may_swap(*row), held = line && line->held;
  const bool to_come = line && line->booking.to > session().now() && !line->signed_as && !line->turnout;
  trouble_->setVisible(row && row->trouble);
  if (row && row->trouble) trouble_->setText(trouble_sentence(*row->trouble));
  hold_->setVisible(slot && moved_.empty() && slot->when.from > session().now());
  move_->setVisible(to_come && moved_.empty());
  remind_->setVisible(to_come);
  print_->setVisible(to_come);
  keep_->setVisible(!moved_.empty());
  book_->setEnabled(slot || swaps || held);
  if (slot)
    book_->say((moved_.empty() ? tr("Book %1", "a day and a time") : tr("Move to %1", "a day and a time"))
                   .arg(short_time(slot->when.from, session().zone())));
  else if (swaps)
    book_->say(tr("Change places with %1").arg(called(session(), line->booking.person)));
  else
    book_->say(held ? tr("It is for certain") : tr("Book"));
}

/// How often somebody stayed away, and what the shop's rule makes of it.
QString DiaryPage::standing_of_member() const {
  const std::vector<Day> days = session().store().days_not_come(member_);
  if (days.empty()) return {};
  const Zone& zone = session().zone();
  QString out = tr("Booked and not come: %1 times, the last on %2.", "how often, a day")
                    .arg(days.size())
                    .arg(short_day(zone.start(*std::ranges::max_element(days)), zone));
  if (const auto rest = session().store().rests_through(member_))
    out += ' ' + tr("By the shop's rule nothing is booked for them through %1.")
                     .arg(short_day(zone.start(*rest), zone));
  return out;
}

void DiaryPage::hold() {
  const DiaryRow* row = selected();
  if (!row || !row->slot) return;
  const Slot slot = *row->slot;
  const int hours = session().store().diary_rules().hold_hours.value_or(usual_hold_hours);
  book_slot(slot, std::min(slot.when.from, session().now() + std::int64_t{3600} * hours));
}

void DiaryPage::confirm(const BookingLine& line) {
  if (enter(db::Confirmed{line.id}, tr("%1 comes for certain.").arg(name_of(session(), line.booking.person))))
    refresh();
}

std::optional<BookingLine> DiaryPage::moved_line() const {
  if (moved_.empty()) return std::nullopt;
  for (const BookingLine& line : bookings(session(), {session().now(), last_instant}))
    if (line.id == moved_) return line;
  return std::nullopt;
}

void DiaryPage::begin_move() {
  const DiaryRow* row = selected();
  if (!row || !row->booking) return;
  const BookingLine line = *row->booking;
  member_ = line.booking.person;
  person_->set_person(member_);
  chosen_target_ = line.booking.target;
  purpose_->setCurrentIndex(purpose_->findData(static_cast<int>(line.booking.purpose)));
  moved_ = line.id;
  list_->setCurrentIndex({});
  refresh();
  list_->setFocus();
}

void DiaryPage::keep_time() {
  const RecordId kept = moved_;
  moved_.clear();
  refresh();
  select_again(kept, std::nullopt);
}

/// Somebody else's booking to come, on the same machine, to change places with.
bool DiaryPage::may_swap(const DiaryRow& row) const {
  const auto own = moved_line();
  if (!own || !row.booking || row.booking->id == own->id || row.booking->turnout) return false;
  const db::Booking& other = row.booking->booking;
  return class_of(other.target) == class_of(own->booking.target) && other.from > session().now() &&
         other.to.seconds - other.from.seconds == own->booking.to.seconds - own->booking.from.seconds;
}

void DiaryPage::swap(const BookingLine& other) {
  const auto own = moved_line();
  if (!own) return;
  for (const auto& [whose, place] : {std::pair(*own, other), std::pair(other, *own)})
    if (const auto problem = not_ready_for(session(), in_place_of(whose, place)))
      return emit tell_problem(*problem);
  const auto done = session().commit_all(
      {db::EnterShopFact{db::Cancel{other.id, tr("changed places").toStdString()}},
       db::EnterShopFact{in_place_of(*own, other)}, db::EnterShopFact{in_place_of(other, *own)}});
  if (!done) {
    emit tell_problem(done.error());
    return;
  }
  moved_.clear();
  refresh();
  emit tell(tr("%1 and %2 have changed places. Tell both.")
                .arg(name_of(session(), own->booking.person), name_of(session(), other.booking.person)));
}

void DiaryPage::copy_reminder() {
  const DiaryRow* row = selected();
  if (!row || !row->booking) return;
  QApplication::clipboard()->setText(reminder_text(session(), *row->booking));
  emit tell(tr("A reminder for %1 is copied: paste it into a message.")
                .arg(name_of(session(), row->booking->booking.person)));
}

void DiaryPage::print_day() {
  const DiaryRow* row = selected();
  if (!row || !row->booking) return;
  const Day day = row->day;
  std::vector<BookingLine> lines =
      bookings(session(), {session().zone().start(day), session().zone().start(day + 1)});
  std::erase_if(lines, [](const BookingLine& line) { return line.turnout || line.signed_as; });
  if (lines.empty()) return;
  const auto printed = print_reminders(session(), lines);
  if (printed)
    emit tell(*printed);
  else
    emit tell_problem(printed.error());
}

}  // namespace wm::app
