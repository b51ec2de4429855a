#pragma once
// Forms to save one-on-ones as a calendar, and to take in when an assessor is busy. Pages show them.
#include <functional>

#include "app/calendars/events.h"
#include "app/lists/form.h"

namespace wm::app {

using Tell = std::function<void(const QString& said)>;

/// Writes a file, and another with what was called off where there is any; then tells where they are.
Form* save_calendar_form(Session& session, const Whose& whose, const Tell& done);
/// Takes a file's busy times in for a person, in place of those before; or says line by line what is wrong.
Form* take_calendar_form(Session& session, const PersonId& person, const Tell& done);

/// "No calendar: …", as many as a form has room for.
QString mistakes_words(const std::vector<Problem>& mistakes);

}  // namespace wm::app
