#pragma once
// Bookings that stopped being possible: an assessor dismissed or away, a quiz lapsed, a machine out of
// service, other hours. What came between is the store's to say; whether the member is ready, the engine's.
#include <QString>
#include <vector>

#include "app/diary/bookings.h"

namespace wm::app {

/// What stands between a booking and its time, by all that is known now; nothing for what is over.
std::optional<Problem> trouble_of(Session& session, const BookingLine& line);

/// Why the member of a booking, made or to be made, will not be ready for it; nothing where they will.
std::optional<Problem> not_ready_for(Session& session, const db::Booking& booking);

struct Trouble {
  BookingLine line;
  Problem problem;
};
/// Those of all bookings that are not over by then, in order of time.
std::vector<Trouble> troubles(Session& session, Instant from);
/// "no longer possible: the shop is not open then."
QString trouble_words(const Problem& problem);
/// The whole of it, with what to do.
QString trouble_sentence(const Problem& problem);

}  // namespace wm::app
