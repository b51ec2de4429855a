#include "core/time/period.h"

#include <chrono>

namespace wm {

namespace {

std::chrono::year_month_day ymd(Day d) { return std::chrono::sys_days(std::chrono::days(d.number)); }

Day day_number(std::chrono::year_month_day date) {
  return {static_cast<std::int32_t>(std::chrono::sys_days(date).time_since_epoch().count())};
}

/// Clamped to the month's last day where the month is shorter.
Day same_day_or_last(std::chrono::year_month month, std::chrono::day day) {
  const auto last = month / std::chrono::last;
  return day_number(std::chrono::year_month_day(month.year(), month.month(), std::min(day, last.day())));
}

}  // namespace

Day end(Day from, Period period) {
  const auto date = ymd(from);
  const auto month = date.year() / date.month() + std::chrono::months(period.count);
  switch (period.unit) {
    case PeriodUnit::days:
      return from + period.count;
    case PeriodUnit::months:
      return same_day_or_last(month, date.day());
    case PeriodUnit::calendar_months:
      return day_number(month / std::chrono::last);
  }
  return from;
}

CivilDate civil(Day d) {
  const auto date = ymd(d);
  return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
          static_cast<int>(static_cast<unsigned>(date.day()))};
}

Day day_of(CivilDate c) {
  return day_number(std::chrono::year(c.year) / std::chrono::month(static_cast<unsigned>(c.month)) /
                    std::chrono::day(static_cast<unsigned>(c.day)));
}

Day birthday(Day born, int years) {
  const auto date = ymd(born);
  const auto turned = (date.year() + std::chrono::years(years)) / date.month() / date.day();
  // Only 29 February can fail to exist; the day after 28 February is 1 March.
  return turned.ok() ? day_number(turned) : day_number(turned.year() / std::chrono::March / 1);
}

}  // namespace wm
