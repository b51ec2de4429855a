// Days and times as people read them.
#include <QDate>
#include <QLocale>
#include <QTime>

#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QDate date(Day d) {
  const CivilDate c = civil(d);
  return QDate(c.year, c.month, c.day);
}

QString written(QDate day, int this_year) {
  const QString form = day.year() == this_year ? Words::tr("d MMMM", "a date of this year")
                                               : Words::tr("d MMMM yyyy", "a date of another year");
  return QLocale().toString(day, form);
}

}  // namespace

QString last_day(Instant instant, const Zone& zone, Instant today) {
  // The day before the one that `instant` falls on, or that day itself where `instant` is its last second's
  // end.
  const Day covered = zone.day(instant) + -1;
  const Day now = zone.day(today);
  if (covered < now && instant > today)
    return Words::tr("today, %1", "a time of day").arg(clock_time(instant, zone));
  return written(date(covered), civil(now).year);
}

QString long_day(Instant t, const Zone& zone) {
  return QLocale().toString(date(zone.day(t)), Words::tr("dddd d MMMM yyyy", "a date in full"));
}

QString short_day(Instant t, const Zone& zone) {
  return QLocale().toString(date(zone.day(t)), Words::tr("d MMM yyyy", "a date in short"));
}

QString clock_time(Instant t, const Zone& zone) {
  const LocalTime at = zone.local(t);
  // The locale's own hours, without the seconds that some have in their short form.
  const bool halves = QLocale().timeFormat(QLocale::ShortFormat).contains('a', Qt::CaseInsensitive);
  return QLocale().toString(QTime(at.hour, at.minute),
                            halves ? QStringLiteral("h:mm AP") : QStringLiteral("HH:mm"));
}

}  // namespace wm::app
