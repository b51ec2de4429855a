#include "app/desk/booking_offer.h"

#include <QDate>
#include <QLocale>

#include "app/desk/tr.h"
#include "app/diary/bookings.h"
#include "app/diary/slots.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

constexpr int days_ahead = 21;

QString weekday(const Session& session, Instant t) {
  const CivilDate c = civil(session.zone().day(t));
  return QLocale().toString(QDate(c.year, c.month, c.day), QStringLiteral("dddd"));
}

std::optional<BookingLine> to_come(const Session& session, const PersonId& person, const TargetName& target) {
  for (const BookingLine& line : bookings(session, {session.now(), last_instant}))
    if (session.joined(line.booking.person) == session.joined(person) &&
        class_of(line.booking.target) == class_of(target) && line.turnout != db::Turnout::not_come)
      return line;
  return std::nullopt;
}

}  // namespace

QString booking_words(const Session& session, const ShopNow& shop, const db::Booking& booking) {
  const Zone& zone = session.zone();
  return DeskWords::tr("%1 %2, %3–%4, %5, with %6", "weekday, day, from, to, unit, assessor")
      .arg(weekday(session, booking.from), short_day(booking.from, zone), clock_time(booking.from, zone),
           clock_time(booking.to, zone), shop.unit_label(booking.machine), assessors_of(session, booking));
}

BookingOffer booking_offer(Session& session, const ShopNow& shop, const PersonId& person,
                           const TargetName& target) {
  BookingOffer offer;
  if (const auto line = to_come(session, person, target)) {
    offer.booked = line->booking;
    const QString words = booking_words(session, shop, line->booking);
    offer.sentence = line->held ? DeskWords::tr("Held, and not for certain: %1.").arg(words)
                                : DeskWords::tr("Booked: %1.").arg(words);
    if (line->held) offer.held = line->id;
    if (line->held) offer.button = DeskWords::tr("It is for certain");
    return offer;
  }
  const auto slots_that_fit = fitting_slots(session, person, target, days_ahead);
  if (slots_that_fit.empty()) {
    offer.sentence = DeskWords::tr("No time fits in the next three weeks: try the waiting list.");
    return offer;
  }
  offer.booking = slots_that_fit.front();
  offer.sentence = DeskWords::tr("First that fits: %1.").arg(booking_words(session, shop, *offer.booking));
  offer.button =
      DeskWords::tr("Book %1 %2", "weekday, time")
          .arg(weekday(session, offer.booking->from), clock_time(offer.booking->from, session.zone()));
  return offer;
}

}  // namespace wm::app
