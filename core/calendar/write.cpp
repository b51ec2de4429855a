#include "core/calendar/write.h"

#include <memory>

#include "core/calendar/ical.h"
#include "core/text/utf8.h"
#include "core/time/period.h"

namespace wm::calendar {
namespace {

/// What no calendar may have becomes a blank; the ends of lines stay.
std::string showable(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    char32_t code = 0;
    const std::size_t size = character(text, code);
    const bool good = size > 0 && (code == '\n' || !is_control(code));
    if (good) out.append(text.substr(0, size));
    if (!good) out += ' ';
    text.remove_prefix(size == 0 ? 1 : size);
  }
  return out;
}

icaltimetype utc(Instant t) {
  const LocalTime local = Zone::utc().local(t);
  icaltimetype out = icaltime_null_time();
  const CivilDate date = civil(local.day);
  out.year = date.year;
  out.month = date.month;
  out.day = date.day;
  out.hour = local.hour;
  out.minute = local.minute;
  out.second = local.second;
  out.zone = icaltimezone_get_utc_timezone();
  return out;
}

void add_text(icalcomponent* to, const std::string& text, icalproperty* (*make)(const char*)) {
  if (!text.empty()) icalcomponent_add_property(to, make(showable(text).c_str()));
}

icalcomponent* event_of(const CalendarEvent& event, const CalendarFile& file) {
  icalcomponent* out = icalcomponent_new(ICAL_VEVENT_COMPONENT);
  add_text(out, event.uid, icalproperty_new_uid);
  icalcomponent_add_property(out, icalproperty_new_dtstamp(utc(file.written)));
  add_text(out, file.organizer, icalproperty_new_organizer);
  icalcomponent_add_property(out, icalproperty_new_dtstart(utc(event.when.from)));
  icalcomponent_add_property(out, icalproperty_new_dtend(utc(event.when.to)));
  icalcomponent_add_property(out, icalproperty_new_sequence(event.sequence));
  icalcomponent_add_property(out, icalproperty_new_status(event.cancelled   ? ICAL_STATUS_CANCELLED
                                                          : event.tentative ? ICAL_STATUS_TENTATIVE
                                                                            : ICAL_STATUS_CONFIRMED));
  add_text(out, event.summary, icalproperty_new_summary);
  add_text(out, event.description, icalproperty_new_description);
  add_text(out, event.place, icalproperty_new_location);
  return out;
}

}  // namespace

std::string write_calendar(const CalendarFile& file) {
  icalerror_set_errors_are_fatal(0);
  const std::unique_ptr<icalcomponent, Free> calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
  icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
  icalcomponent_add_property(calendar.get(), icalproperty_new_prodid("-//Witnessmark//Diary//EN"));
  icalcomponent_add_property(
      calendar.get(),
      icalproperty_new_method(file.method == Method::cancel ? ICAL_METHOD_CANCEL : ICAL_METHOD_PUBLISH));
  add_text(calendar.get(), file.name, icalproperty_new_name);
  for (const CalendarEvent& each : file.events)
    icalcomponent_add_component(calendar.get(), event_of(each, file));
  const std::unique_ptr<char, Free> text(icalcomponent_as_ical_string_r(calendar.get()));
  return text ? std::string(text.get()) : std::string();
}

}  // namespace wm::calendar
