#pragma once
// A day, typed as people write one; empty means now.
#include <QLineEdit>
#include <optional>

#include "core/problem.h"
#include "core/time/period.h"

namespace wm::app {

/// Reads "2026-11-25", "25 Nov 2026", "25 November", "25.11.2026" and the locale's own form; nothing where it
/// is no date. A year left out is `this_year`.
std::optional<Day> read_day(const QString& text, int this_year);

/// Up and Down move by a day, Page Up and Page Down by a month.
class DateField : public QLineEdit {
  Q_OBJECT
 public:
  /// `empty` is what an empty field says: "now", "no end".
  explicit DateField(const QString& empty, QWidget* parent = nullptr);
  /// What an empty field steps from, and the year that a date without one is in.
  void set_today(Day today) { today_ = today; }
  std::optional<Day> day() const { return day_; }
  void set_day(std::optional<Day> day);
  /// What stands in the field now, while `day` is what was last finished with Enter or Tab: forms that a key
  /// saves from within the field read this one. Nothing where it is empty or no date.
  std::optional<Day> typed() const;
  /// Whether what is typed now is a date, or nothing.
  bool is_good() const;

 signals:
  void day_changed();
  /// What was typed is no date.
  void refused(const wm::Problem& problem);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void take();
  void move(int days, int months);

  std::optional<Day> day_;
  Day today_{};
};

}  // namespace wm::app
