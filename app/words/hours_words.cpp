#include "app/words/hours_words.h"

#include <QLocale>
#include <QStringList>

#include "app/words/days.h"
#include "app/words/labels.h"
#include "app/words/tr.h"

namespace wm::app {
namespace {

QString weekday(int day) { return QLocale().dayName(day + 1); }

/// ": holidays", or nothing.
QString because(const std::string& why) {
  return why.empty() ? QString() : Words::tr(": %1", "a reason at a sentence's end").arg(said_words(why));
}

QString when(Instant t, const Zone& zone) {
  return Words::tr("%1, %2", "a day and a time").arg(short_day(t, zone), clock_time(t, zone));
}

}  // namespace

QString minutes_span(int from, int to) {
  return Words::tr("%1–%2", "from a time to a time").arg(minute_words(from), minute_words(to));
}

QString parts_words(const std::vector<db::DayPart>& parts) {
  QStringList out;
  for (const db::DayPart& each : parts) out << minutes_span(each.from_minute, each.to_minute);
  return out.join(Words::tr(", ", "between hours"));
}

QString length_of_time(int minutes) {
  if (minutes == 60) return Words::tr("an hour");
  if (minutes % 60 == 0) return Words::tr("%1 hours").arg(minutes / 60);
  return Words::tr("%1 minutes").arg(minutes);
}

QString days_span(Day first, Day last, const Zone& zone) {
  const QString from = short_day(zone.start(first), zone);
  return first == last ? from
                       : Words::tr("%1 through %2", "days").arg(from, short_day(zone.start(last), zone));
}

QString takes_on_words(const db::TakesOn& takes) {
  QStringList out;
  if (takes.longest_day) out << Words::tr("at most %1 a day").arg(length_of_time(*takes.longest_day));
  if (takes.stretch)
    out << Words::tr("at most %1 on end, then a break of %2")
               .arg(length_of_time(*takes.stretch), length_of_time(takes.rest.value_or(0)));
  return out.isEmpty() ? Words::tr("as much as there is") : out.join(QStringLiteral("; "));
}

QString hours_sentence(const db::Hours& r, const RecordReader& reader) {
  return Words::tr("%1 is usually in on %2, %3 to %4.")
      .arg(reader.name_of(r.person), weekday(r.weekday), minute_words(r.from_minute),
           minute_words(r.to_minute));
}

QString hours_sentence(const db::WeekHours& r, const RecordReader&) {
  const QString on = weekday(r.weekday), span = minutes_span(r.from_minute, r.to_minute);
  if (r.doing == db::Doing::open) return Words::tr("The shop is open on %1, %2.").arg(on, span);
  return Words::tr("On duty on %1, %2: %3.", "weekday, hours, how many adults")
      .arg(on, span, r.adults == 1 ? Words::tr("one adult") : Words::tr("%1 adults").arg(r.adults));
}

QString hours_sentence(const db::OtherHours& r, const RecordReader& reader) {
  const QString days = days_span(r.first, r.last, reader.zone), parts = parts_words(r.parts);
  if (!r.person.empty())
    return (r.parts.empty() ? Words::tr("%1 is away, %2%3.", "who, days, why")
                                  .arg(reader.name_of(r.person), days, because(r.why))
                            : Words::tr("%1 is in on other hours, %2: %4%3.", "who, days, why, hours")
                                  .arg(reader.name_of(r.person), days, because(r.why), parts));
  if (r.doing == db::Doing::open)
    return r.parts.empty() ? Words::tr("The shop is closed, %1%2.", "days, why").arg(days, because(r.why))
                           : Words::tr("The shop has other hours, %1: %3%2.", "days, why, hours")
                                 .arg(days, because(r.why), parts);
  return r.parts.empty() ? Words::tr("Nobody is on duty, %1%2.", "days, why").arg(days, because(r.why))
                         : Words::tr("On duty at other hours, %1: %3%2.", "days, why, hours")
                               .arg(days, because(r.why), parts);
}

QString hours_sentence(const db::Break& r, const RecordReader& reader) {
  return Words::tr("%1 has a break on %2, %3.")
      .arg(reader.name_of(r.person), weekday(r.weekday), minutes_span(r.from_minute, r.to_minute));
}

QString hours_sentence(const db::TakesOn& r, const RecordReader& reader) {
  return Words::tr("%1 takes on %2.").arg(reader.name_of(r.person), takes_on_words(r));
}

QString hours_sentence(const db::Lasts& r, const RecordReader&) {
  return Words::tr("A one-on-one on %1 lasts %2.")
      .arg(class_label(r.machine_class), length_of_time(r.minutes));
}

QString hours_sentence(const db::DiaryRules& r, const RecordReader&) {
  QStringList out;
  if (r.longest_wait) out << Words::tr("Nobody is to wait longer than %1 days.").arg(*r.longest_wait);
  if (r.hold_hours) out << Words::tr("A time is held for %1 hours.").arg(*r.hold_hours);
  if (r.not_come && r.not_come_days && r.rest_days)
    out << Words::tr("Whoever has not come %1 times within %2 days is booked again after %3 days.")
               .arg(*r.not_come)
               .arg(*r.not_come_days)
               .arg(*r.rest_days);
  return out.isEmpty() ? Words::tr("The shop books without rules of its own.") : out.join(' ');
}

QString hours_sentence(const db::Upkeep& r, const RecordReader& reader) {
  return Words::tr("Maintenance of %1, %2 to %3%4.", "machine, from, to, why")
      .arg(reader.machine_of(r.machine), when(r.from, reader.zone), when(r.to, reader.zone), because(r.why));
}

QString hours_sentence(const db::Busy& r, const RecordReader& reader) {
  if (r.parts.empty()) return Words::tr("%1 is busy at no time that is known.").arg(reader.name_of(r.person));
  return Words::tr("Busy times of %1 taken from a calendar, %2 to %3: %4.")
      .arg(reader.name_of(r.person), short_day(r.from, reader.zone), short_day(r.to, reader.zone))
      .arg(r.parts.size());
}

}  // namespace wm::app
