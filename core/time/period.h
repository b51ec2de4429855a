#pragma once
// Periods and the civil calendar they are counted on.
#include "core/time/instant.h"

namespace wm {

/// What a period is counted in. `calendar_months` runs to the end of the month it reaches, as in the "24
/// calendar months" of 14 CFR 61.56(c).
enum class PeriodUnit { days, months, calendar_months };

/// 1 to 36525 days, or 1 to 1200 months.
struct Period {
  PeriodUnit unit = PeriodUnit::days;
  int count = 1;
  friend bool operator==(const Period&, const Period&) = default;
};

/// The last day that a period begun on `from` covers: `from` + n days; the same day of the month n months on,
/// or that month's last day where it has no such day; the last day of the n-th month after `from`'s.
Day end(Day from, Period period);

struct CivilDate {
  int year, month, day;  // month 1 to 12, day 1 to 31
  friend auto operator<=>(const CivilDate&, const CivilDate&) = default;
};
CivilDate civil(Day d);
Day day_of(CivilDate c);

/// The birthday on which somebody born on `born` turns `years`; born on 29 February, the birthday in a common
/// year is 1 March.
Day birthday(Day born, int years);

}  // namespace wm
