#pragma once
// One-on-ones as an iCalendar file (RFC 5545) that other calendars take in: one person's, one assessor's, one
// machine's.
#include <string>
#include <vector>

#include "core/diary/slots.h"

namespace wm::calendar {

struct CalendarEvent {
  std::string uid;   // the same each time it is written: what a calendar knows it by; not empty
  int sequence = 0;  // goes up with every change, a cancellation among them
  bool cancelled = false;
  Interval when;
  std::string summary, description, place;  // may be empty; in UTF-8, control characters become blanks
  bool tentative = false;                   // held, and not yet for certain
  friend bool operator==(const CalendarEvent&, const CalendarEvent&) = default;
};

/// What a calendar is asked to do with the events (RFC 5546, 1.4): take over what is there, or take out what
/// was cancelled.
enum class Method { publish, cancel };

struct CalendarFile {
  Method method = Method::publish;
  std::string name;       // shown by calendars
  std::string organizer;  // an address, as "mailto:desk@shop.example"; not empty
  Instant written;
  std::vector<CalendarEvent> events;
};

/// Times in UTC, so that no zone has to be explained. Escapes and folds at 75 octets are libical's.
std::string write_calendar(const CalendarFile& file);

}  // namespace wm::calendar
