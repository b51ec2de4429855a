#include "app/diary/reminder.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/diary/diary_rows.h"
#include "app/lists/answer_reader.h"
#include "app/print/html_paper.h"
#include "app/words/standing_words.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Reminder {
  Q_DECLARE_TR_FUNCTIONS(Reminder)
};

QString what_for(db::Purpose purpose) {
  switch (purpose) {
    case db::Purpose::teach:
      return Reminder::tr("You are shown how to work on %1");
    case db::Purpose::practise:
      return Reminder::tr("You practise on %1");
    case db::Purpose::check_out:
      return Reminder::tr("Your check-out is on %1");
  }
  return {};
}

QString to_be_there(const Session& session, const BookingLine& line) {
  if (!line.held || !line.booking.held_through)
    return Reminder::tr(
        "If you can't come, say so as soon as you can, so that somebody else can have the time.");
  return Reminder::tr("This time is held for you through %1, %2. Tell us by then that you will come.",
                      "a day, a time")
      .arg(long_day(*line.booking.held_through, session.zone()),
           clock_time(*line.booking.held_through, session.zone()));
}

/// The lines of a reminder, the greeting first.
QStringList lines_of(Session& session, const BookingLine& line) {
  const db::Booking& b = line.booking;
  QStringList out{
      Reminder::tr("%1,", "a name, to begin a message").arg(called(session, b.person)),
      what_for(b.purpose).arg(unit_label(units(session), b.machine)) + ": " +
          Reminder::tr("%1, %2, with %3, at %4.", "day, times, assessor, shop")
              .arg(long_day(b.from, session.zone()), time_span({b.from, b.to}, session.zone()),
                   assessors_of(session, b), QString::fromStdString(session.store().details().name))};
  if (const QStringList left_open = restricted_now(session, b.person, b.target); !left_open.isEmpty())
    out << Reminder::tr("%1 That stands through the next check-out that is passed.",
                        "what is restricted, as a sentence")
               .arg(restricted_sentence(left_open));
  return out << to_be_there(session, line)
             << Reminder::tr(
                    "Come in closed shoes and close sleeves, hair tied back, without gloves, rings "
                    "or anything that hangs, and with eye and ear protection.");
}

}  // namespace

QString reminder_text(Session& session, const BookingLine& line) {
  return lines_of(session, line).join("\n\n");
}

QString reminders_html(Session& session, const std::vector<BookingLine>& lines) {
  QString html;
  for (const BookingLine& line : lines) {
    for (const QString& each : lines_of(session, line))
      html += QStringLiteral("<p>%1</p>").arg(each.toHtmlEscaped());
    html += QStringLiteral("<p><small>%1</small></p><hr>").arg(caution().toHtmlEscaped());
  }
  return html;
}

Expected<QString> print_reminders(Session& session, const std::vector<BookingLine>& lines) {
  const QString day = long_day(lines.front().booking.from, session.zone());
  return print_html(session, Reminder::tr("Reminders %1").arg(day), Reminder::tr("Reminders for %1").arg(day),
                    reminders_html(session, lines))
      .map([&](const QString& path) {
        return path.isEmpty() ? Reminder::tr("Reminders for %1 are printed.").arg(day)
                              : Reminder::tr("No printer is set up; written to %1.").arg(path);
      });
}

}  // namespace wm::app
