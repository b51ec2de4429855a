#pragma once
// What each computer of the shop is for. Where there are several they work at one server, and a computer is
// known by the login that it comes in by: what a manager has said of that login holds, whatever the program
// says of itself.
#include <string>
#include <vector>

#include "core/problem.h"
#include "db/journal/memory.h"

namespace wm::db {

/// What was said last of each login, in order of logins.
std::vector<StationTold> stations(const Memory& memory);
/// Of a login of which nothing was said: `whole`.
Station station_of(const Memory& memory, const std::string& login);
/// As it is called in sentences: "the office".
std::string named(Station station);

/// Whether what is entered there may come from the quiz station's window, or only from it.
Expected<void> check_window(Station station, bool quiz_station);
/// Refuses that no computer would be left at which a manager may say what the others are.
Expected<void> check_office(const Memory& memory);

}  // namespace wm::db
