#pragma once
// One-on-ones as events of a calendar: each keeps its UID for good, through every move, and its SEQUENCE goes
// up with whatever was entered about it.
#include <string>
#include <variant>
#include <vector>

#include "app/session.h"
#include "core/calendar/write.h"

namespace wm::app {

/// Of a person, as member or as assessor; or of a unit.
struct OfPerson {
  PersonId person;
};
struct OfUnit {
  MachineId unit;
};
using Whose = std::variant<OfPerson, OfUnit>;

/// What was ever booked and is not over, in order of time; what no longer stands as cancelled. As all that is
/// entered now says.
std::vector<calendar::CalendarEvent> events_of(Session& session, const Whose& whose);
/// "Jonas Lindqvist", "Jointer/planer, unit 1"
QString whose_words(const Session& session, const Whose& whose);
/// All of them to be taken over (PUBLISH), and only what was called off (CANCEL); empty where nothing was.
std::string published(Session& session, const Whose& whose);
std::string called_off(Session& session, const Whose& whose);

}  // namespace wm::app
