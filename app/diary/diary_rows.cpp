#include "app/diary/diary_rows.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <iterator>

#include "app/diary/slots.h"
#include "app/diary/trouble.h"
#include "app/diary/why_words.h"
#include "app/lists/answer_reader.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QString outcome_words(Outcome outcome) {
  switch (outcome) {
    case Outcome::passed:
      return DiaryRows::tr("signed: passed");
    case Outcome::failed:
      return DiaryRows::tr("signed: failed");
    case Outcome::stopped:
      return DiaryRows::tr("signed: stopped");
  }
  return {};
}

QString turnout_words(db::Turnout turnout) {
  switch (turnout) {
    case db::Turnout::arrived:
      return DiaryRows::tr("arrived");
    case db::Turnout::late:
      return DiaryRows::tr("late");
    case db::Turnout::not_come:
      return DiaryRows::tr("not come");
  }
  return {};
}

/// What is restricted for the person on the target now.
QString restricted_for(Session& session, const Restrictions& left_open, const PersonId& person,
                       const TargetName& target) {
  return restricted_words(left_open.on(session.decider(), session.joined(person), target, session.at()));
}

QString and_restricted(const QString& words, const QString& restricted) {
  return restricted.isEmpty()
             ? words
             : DiaryRows::tr("%1; %2", "how a booking is, what is restricted").arg(words, restricted);
}

DiaryRow booking_row(Session& session, const std::vector<Unit>& units, const Restrictions& left_open,
                     const BookingLine& line) {
  DiaryRow row;
  row.kind = DiaryRow::Kind::booking;
  row.time = time_span({line.booking.from, line.booking.to}, session.zone());
  row.machine = unit_label(units, line.booking.machine);
  row.people = DiaryRows::tr("%1 with %2", "member, assessor")
                   .arg(name_of(session, line.booking.person), assessors_of(session, line.booking));
  row.reason = booking_state(line, session.present(), session.zone());
  row.booking = line;
  row.trouble = trouble_of(session, line);
  if (row.trouble) row.reason = trouble_words(*row.trouble);
  row.reason = and_restricted(row.reason,
                              restricted_for(session, left_open, line.booking.person, line.booking.target));
  return row;
}

DiaryRow slot_row(const Session& session, const std::vector<Unit>& units, const SlotQuestion& question,
                  const QString& restricted, const Slot& slot) {
  DiaryRow row;
  row.kind = DiaryRow::Kind::slot;
  row.time = time_span(slot.when, session.zone());
  row.machine = unit_label(units, slot.unit);
  row.people =
      DiaryRows::tr("free with %1", "an assessor").arg(names_of(session, slot.assessor, slot.second));
  row.reason = fit_words(session, question, slot);
  row.reason = and_restricted(row.reason, restricted);
  row.slot = slot;
  return row;
}

/// Where a booking is already it is not moved to.
bool is_where(const Slot& slot, const db::Booking& booking) {
  return slot.when == Interval{booking.from, booking.to} && slot.assessor == booking.assessor &&
         slot.second == booking.second && slot.unit == booking.machine;
}

Instant begin(const DiaryRow& row) { return row.slot ? row.slot->when.from : row.booking->booking.from; }

/// A heading before the first row of each day; today has one even where it is empty.
std::vector<DiaryRow> with_headings(const Session& session, std::vector<DiaryRow> rows, Day first) {
  std::vector<DiaryRow> out;
  const auto heading = [&](Day day) {
    DiaryRow row;
    row.day = day;
    row.time = day_heading(day, session);
    out.push_back(std::move(row));
  };
  if (rows.empty() || session.zone().day(begin(rows.front())) != first) {
    heading(first);
    DiaryRow nothing;
    nothing.kind = DiaryRow::Kind::nothing;
    nothing.day = first;
    nothing.time = rows.empty() ? DiaryRows::tr("Nothing is booked in these days.")
                                : DiaryRows::tr("Nothing on this day.");
    out.push_back(std::move(nothing));
  }
  for (DiaryRow& row : rows) {
    row.day = session.zone().day(begin(row));
    if (out.empty() || out.back().day != row.day) heading(row.day);
    out.push_back(std::move(row));
  }
  return out;
}

}  // namespace

QString purpose_words(db::Purpose purpose) {
  switch (purpose) {
    case db::Purpose::teach:
      return DiaryRows::tr("teaching");
    case db::Purpose::practise:
      return DiaryRows::tr("practice");
    case db::Purpose::check_out:
      return DiaryRows::tr("check-out");
  }
  return {};
}

QString booking_state(const BookingLine& line, Instant now, const Zone& zone) {
  if (line.signed_as) return outcome_words(line.signed_as->outcome);
  if (line.turnout) return turnout_words(*line.turnout);
  if (line.held && line.booking.held_through)
    return DiaryRows::tr("held through %1, %2; not for certain", "a day, a time")
        .arg(short_day(*line.booking.held_through, zone), clock_time(*line.booking.held_through, zone));
  const std::int64_t minutes = (line.booking.from.seconds - now.seconds + 59) / 60;
  const bool today = zone.day(line.booking.from) == zone.day(now);
  if (!today || line.booking.to <= now) return purpose_words(line.booking.purpose);
  if (minutes <= 0) return DiaryRows::tr("due now");
  if (minutes == 1) return DiaryRows::tr("due in a minute");
  if (minutes < 120) return DiaryRows::tr("due in %1 minutes").arg(minutes);
  return DiaryRows::tr("due in %1 hours").arg(minutes / 60);
}

QString day_heading(Day day, const Session& session) {
  const CivilDate c = civil(day);
  const Day today = session.zone().day(session.present());
  const bool this_year = civil(today).year == c.year;
  const QString written =
      QLocale().toString(QDate(c.year, c.month, c.day),
                         this_year ? DiaryRows::tr("dddd d MMMM") : DiaryRows::tr("dddd d MMMM yyyy"));
  return day == today ? DiaryRows::tr("Today, %1").arg(written) : written;
}

std::vector<DiaryRow> diary_rows(Session& session, const DiaryQuestion& q) {
  const std::vector<Unit> shop_units = units(session);
  const Interval days{session.zone().start(q.first), session.zone().start(q.first + q.days)};
  const Restrictions left_open = restrictions(session);
  std::vector<DiaryRow> rows, free;
  for (const BookingLine& line : bookings(session, days))
    if (line.booking.from >= days.from) rows.push_back(booking_row(session, shop_units, left_open, line));
  if (!q.wish.person.empty() && !q.wish.target.empty()) {
    const SlotQuestion question = slot_question(session, q.wish, q.first, q.days, q.moved);
    const auto moved = std::ranges::find_if(
        rows, [&](const DiaryRow& row) { return row.booking && row.booking->id == q.moved; });
    const QString restricted = restricted_for(session, left_open, q.wish.person, q.wish.target);
    for (const Slot& slot : side_by_side(fitting(question)))
      if (moved == rows.end() || !is_where(slot, moved->booking->booking))
        free.push_back(slot_row(session, shop_units, question, restricted, slot));
    std::ranges::move(free, std::back_inserter(rows));
  }
  std::stable_sort(rows.begin(), rows.end(),
                   [](const DiaryRow& a, const DiaryRow& b) { return begin(a) < begin(b); });
  return with_headings(session, std::move(rows), q.first);
}

void DiaryRows::set(std::vector<DiaryRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

const DiaryRow* DiaryRows::row(const QModelIndex& index) const {
  const auto i = static_cast<std::size_t>(index.row());
  return index.isValid() && i < rows_.size() ? &rows_[i] : nullptr;
}

int DiaryRows::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant DiaryRows::data(const QModelIndex& index, int role) const {
  const DiaryRow* each = row(index);
  if (!each || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)) return {};
  QStringList parts{each->time, each->machine, each->people, each->reason};
  parts.removeAll(QString());
  return parts.join(", ");
}

Qt::ItemFlags DiaryRows::flags(const QModelIndex& index) const {
  const DiaryRow* each = row(index);
  const bool chosen = each && (each->kind == DiaryRow::Kind::booking || each->kind == DiaryRow::Kind::slot);
  return chosen ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

}  // namespace wm::app
