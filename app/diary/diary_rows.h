#pragma once
// The diary's list: days, bookings and free slots, in order of time.
#include <QAbstractListModel>
#include <optional>
#include <vector>

#include "app/diary/bookings.h"
#include "app/diary/slots.h"
#include "app/session.h"

namespace wm::app {

struct DiaryRow {
  enum class Kind { day, booking, slot, nothing };
  Kind kind = Kind::day;
  QString time, machine, people, reason;
  std::optional<BookingLine> booking;
  std::optional<Slot> slot;
  std::optional<Problem> trouble;  // what makes a booking no longer possible
  Day day;
};

class DiaryRows : public QAbstractListModel {
  Q_OBJECT
 public:
  using QAbstractListModel::QAbstractListModel;

  void set(std::vector<DiaryRow> rows);
  const DiaryRow* row(const QModelIndex& index) const;
  const std::vector<DiaryRow>& rows() const { return rows_; }

  int rowCount(const QModelIndex& parent = {}) const override;
  /// The whole row as one sentence, which is also what is read aloud.
  QVariant data(const QModelIndex& index, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  std::vector<DiaryRow> rows_;
};

/// What the list shows for so many days from `first` on; slots only where a person and a machine are chosen.
struct DiaryQuestion {
  Wish wish;
  Day first;
  int days = 14;
  RecordId moved = {};  // a booking whose own time is free
};
std::vector<DiaryRow> diary_rows(Session& session, const DiaryQuestion& question);
/// "check-out"
QString purpose_words(db::Purpose purpose);
/// "arrived", "due in 40 minutes", "check-out signed: passed"
QString booking_state(const BookingLine& line, Instant now, const Zone& zone);
/// "Thu 26 Nov, 18:00": short enough for a button.
QString short_time(Instant t, const Zone& zone);
/// "Today, Thursday 26 November, 18:00"
QString day_and_time(const Interval& when, const Zone& zone, Session& session);
/// "Thursday 26 November"; "Today, Wednesday 25 November"
QString day_heading(Day day, const Session& session);

}  // namespace wm::app
