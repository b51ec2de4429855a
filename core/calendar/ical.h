#pragma once
// libical's properties of one content line, freed in the end. For core/calendar's own files only.
#include <libical/ical.h>

#include <memory>
#include <vector>

#include "core/calendar/lines.h"

namespace wm::calendar {

/// Gives back what libical has made.
struct Free {
  void operator()(icalcomponent* component) const { icalcomponent_free(component); }
  void operator()(icalrecur_iterator* iterator) const { icalrecur_iterator_free(iterator); }
  void operator()(char* text) const { icalmemory_free_buffer(text); }
};

class Parsed {
 public:
  /// The line's properties: one for each value of a list. None where there is a mistake, which is told.
  Parsed(const ContentLine& line, Mistakes& mistakes);
  const std::vector<icalproperty*>& properties() const { return properties_; }

 private:
  std::unique_ptr<icalcomponent, Free> holder_;
  std::vector<icalproperty*> properties_;
};

/// Whether a line's value would make a number overflow: more digits in a row than any time has.
bool too_many_digits(std::string_view text);

}  // namespace wm::calendar
