#pragma once
// What somebody is told of their one-on-one, to copy into a message or to print.
#include <QString>

#include "app/diary/bookings.h"

namespace wm::app {

QString reminder_text(Session& session, const BookingLine& line);
/// All of them on paper, one after the other.
QString reminders_html(Session& session, const std::vector<BookingLine>& lines);
/// To the printer, or where there is none as a PDF among the user's documents; the journal notes it. Gives
/// the sentence that says where it went.
Expected<QString> print_reminders(Session& session, const std::vector<BookingLine>& lines);

}  // namespace wm::app
