#include "app/words/counted.h"

#include "app/words/tr.h"

namespace wm::app {

QString minutes_words(int n) { return n == 1 ? Words::tr("1 minute") : Words::tr("%n minutes", "", n); }
QString sessions_words(int n) { return n == 1 ? Words::tr("1 session") : Words::tr("%n sessions", "", n); }
QString times_words(int n) { return n == 1 ? Words::tr("once") : Words::tr("%n times", "", n); }

QString period_words(const Period& period) {
  const int n = period.count;
  switch (period.unit) {
    case PeriodUnit::days:
      return n == 1 ? Words::tr("1 day") : Words::tr("%n days", "", n);
    case PeriodUnit::months:
      return n == 1 ? Words::tr("1 month") : Words::tr("%n months", "", n);
    case PeriodUnit::calendar_months:
      return n == 1 ? Words::tr("1 calendar month") : Words::tr("%n calendar months", "", n);
  }
  return {};
}

}  // namespace wm::app
