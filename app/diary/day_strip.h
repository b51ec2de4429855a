#pragma once
// One day by machine: a thin band a unit on a scale of hours; what is booked is filled, what is chosen
// hatched.
#include <QWidget>
#include <vector>

#include "app/diary/bookings.h"
#include "app/session.h"

namespace wm::app {

struct DayBand {
  MachineId machine;
  QString label;
  std::vector<Interval> booked;
  std::vector<Interval> chosen;
  bool out_of_service = false;
};

/// The units of `target`'s class (none: of no class) and every other unit with a booking on that day.
std::vector<DayBand> day_bands(Session& session, Day day, const TargetName& target,
                               const std::optional<Slot>& chosen);

class DayStrip : public QWidget {
  Q_OBJECT
 public:
  explicit DayStrip(QWidget* parent = nullptr);
  void show_day(const Zone& zone, Day day, std::vector<DayBand> bands);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {220, sizeHint().height()}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  qreal x(Instant t) const;
  void paint_hours(QPainter& painter) const;
  void paint_band(QPainter& painter, const DayBand& band, int top) const;
  void find_hours();

  Zone zone_ = Zone::utc();
  Day day_{};
  std::vector<DayBand> bands_;
  std::size_t left_out_ = 0;
  int first_hour_ = 9, last_hour_ = 21;
  int labels_ = 0;
};

}  // namespace wm::app
