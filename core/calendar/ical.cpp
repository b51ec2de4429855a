#include "core/calendar/ical.h"

namespace wm::calendar {

Parsed::Parsed(const ContentLine& line, Mistakes& mistakes) {
  icalerror_set_errors_are_fatal(0);
  const std::string whole = "BEGIN:VEVENT\r\n" + line.text + "\r\nEND:VEVENT\r\n";
  holder_.reset(icalparser_parse_string(whole.c_str()));
  bool wrong = holder_ == nullptr || too_many_digits(line.text);
  for (icalproperty* each = wrong ? nullptr
                                  : icalcomponent_get_first_property(holder_.get(), ICAL_ANY_PROPERTY);
       each != nullptr; each = icalcomponent_get_next_property(holder_.get(), ICAL_ANY_PROPERTY)) {
    // The parser leaves a property of its own where it did not understand a value.
    wrong = wrong || icalproperty_isa(each) == ICAL_XLICERROR_PROPERTY;
    properties_.push_back(each);
  }
  if (!wrong && !properties_.empty()) return;
  properties_.clear();
  mistakes.add(line.number, quoted(line.text) + " can't be read.",
               "Write its value as RFC 5545 has it: times as 20260302T090000, lengths as PT1H30M.");
}

bool too_many_digits(std::string_view text) {
  int digits = 0;
  for (const char c : text) {
    digits = c >= '0' && c <= '9' ? digits + 1 : 0;
    if (digits > 8) return true;
  }
  return false;
}

}  // namespace wm::calendar
