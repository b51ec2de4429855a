#include "app/words/days.h"

#include <QDate>
#include <QLocale>
#include <QRegularExpression>
#include <QTime>

#include "app/words/tr.h"

namespace wm::app {

namespace {

QDate date(Day d) {
  const CivilDate c = civil(d);
  return QDate(c.year, c.month, c.day);
}

QString written(Day day, int this_year) {
  const QDate d = date(day);
  const QString form = d.year() == this_year ? Words::tr("d MMMM", "a date of this year")
                                             : Words::tr("d MMMM yyyy", "a date of another year");
  return QLocale().toString(d, form);
}

QString in_short(Day day) {
  return QLocale().toString(date(day), Words::tr("d MMM yyyy", "a date in short"));
}

int year_of(Instant today, const Zone& zone) { return civil(zone.day(today)).year; }

/// The locale's short form without the seconds and the zone that some have in it.
QString hours_and_minutes() {
  static const QRegularExpression seconds(QStringLiteral(R"([:.\s]*s{1,2}(?=[^s]|$))")),
      zone(QStringLiteral(R"(\s*[\[(]?\bt\b[\])]?\s*)"));
  return QLocale().timeFormat(QLocale::ShortFormat).remove(seconds).remove(zone).trimmed();
}

}  // namespace

Day last_whole_day(Instant until, const Zone& zone) {
  // The date at `until` may lie behind: a clock set back over midnight shows the day before once more.
  Day begun = zone.day(until) + 1;
  while (zone.start(begun) > until) begun = begun + -1;
  return begun + -1;
}

QString last_day(Instant until, const Zone& zone, Instant today) {
  const Day covered = last_whole_day(until, zone);
  if (covered < zone.day(today) && until > today)
    return Words::tr("today, %1", "a time of day").arg(clock_time(until, zone));
  return written(covered, year_of(today, zone));
}

QString day_words(Instant t, const Zone& zone, Instant today) {
  return written(zone.day(t), year_of(today, zone));
}

QString moment_words(Instant t, const Zone& zone, Instant today) {
  const Day day = zone.day(t);
  const bool begins = zone.start(day) == t;
  if (day == zone.day(today))
    return t <= today || begins ? Words::tr("today")
                                : Words::tr("today, %1", "a time of day").arg(clock_time(t, zone));
  const QString words = written(day, year_of(today, zone));
  return begins ? words : Words::tr("%1, %2", "a day and a time").arg(words, clock_time(t, zone));
}

QString long_day(Instant t, const Zone& zone) {
  return QLocale().toString(date(zone.day(t)), Words::tr("dddd d MMMM yyyy", "a date in full"));
}

QString short_last_day(Instant until, const Zone& zone, Instant today) {
  const Day covered = last_whole_day(until, zone);
  return covered < zone.day(today) && until > today ? Words::tr("today") : in_short(covered);
}

QString short_day(Instant t, const Zone& zone) { return in_short(zone.day(t)); }

QString clock_time(Instant t, const Zone& zone) {
  const LocalTime at = zone.local(t);
  return QLocale().toString(QTime(at.hour, at.minute), hours_and_minutes());
}

QString time_words(Instant t, const Zone& zone, Instant today) {
  const QString time = clock_time(t, zone);
  if (zone.day(t) == zone.day(today)) return time;
  return Words::tr("%1, %2", "a day and a time").arg(day_words(t, zone, today), time);
}

QString minute_words(int minute) {
  if (minute == 24 * 60) return Words::tr("midnight");
  return QLocale().toString(QTime(minute / 60, minute % 60), hours_and_minutes());
}

}  // namespace wm::app
