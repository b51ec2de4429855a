#pragma once
// What the lines of an event say: times in their zones, lengths, rules by which they repeat. libical reads
// the values.
#include <optional>
#include <variant>
#include <vector>

#include "core/calendar/lines.h"
#include "core/calendar/zones.h"
#include "core/diary/slots.h"

struct icalrecurrencetype;

namespace wm::calendar {

/// A time as it stands in a file, and the zone that it is meant in.
struct Moment {
  LocalTime local;
  bool is_date = false;  // a whole day
  CalendarZone zone = Zone::utc();
  Instant instant() const { return is_date ? zone.start(local.day) : zone.instant(local); }
};

/// Days are days of the calendar, whatever their length; seconds are seconds (RFC 5545, 3.3.6).
struct Length {
  int days = 0;
  std::int64_t seconds = 0;
};
Instant after(const Moment& moment, const Length& length);

/// A moment with its end, or its length, where it has one.
struct Stay {
  Moment from;
  std::variant<std::monostate, Moment, Length> to;
};

/// Reads the times of one line, of one property each: DTSTART, DTEND, RECURRENCE-ID, EXDATE, RDATE, FREEBUSY,
/// each in the zone that it names. Empty where there is a mistake.
std::vector<Stay> read_stays(const ContentLine& line, Zones& zones, Mistakes& mistakes);
std::optional<Length> read_length(const ContentLine& line, Mistakes& mistakes);

}  // namespace wm::calendar
