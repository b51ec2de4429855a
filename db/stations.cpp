#include "db/stations.h"

#include <algorithm>
#include <map>

#include "db/refuse.h"

namespace wm::db {

std::vector<StationTold> stations(const Memory& memory) {
  std::map<std::string, StationTold> last;
  for (const std::size_t i : memory.of_kind("station")) {
    const Entry& entry = memory.entries()[i];
    if (entry.voided) continue;
    const auto& told = *as<StationTold>(entry.fact);
    last[told.login] = told;
  }
  std::vector<StationTold> all;
  for (auto& [login, told] : last) all.push_back(std::move(told));
  return all;
}

Station station_of(const Memory& memory, const std::string& login) {
  const auto all = stations(memory);
  const auto told = std::ranges::find(all, login, &StationTold::login);
  return told == all.end() ? Station::whole : told->station;
}

std::string named(Station station) {
  switch (station) {
    case Station::whole:
      return "a computer that does it all";
    case Station::front:
      return "the front desk";
    case Station::machine:
      return "the tablet at the machines";
    case Station::quiz:
      return "the quiz station";
    case Station::office:
      return "the office";
  }
  return {};
}

Expected<void> check_window(Station station, bool quiz_station) {
  if (station == Station::quiz && !quiz_station)
    return refuse("station", "This computer is the quiz station, and takes nothing else.",
                  "Enter it at the front desk or in the office.");
  if (quiz_station && (station == Station::machine || station == Station::office))
    return refuse("station", "No quiz is taken at " + named(station) + ".",
                  "Let them come to the quiz station or the front desk.");
  return {};
}

Expected<void> check_office(const Memory& memory) {
  const auto all = stations(memory);
  const auto says = [](const StationTold& told) {
    return told.station == Station::office || told.station == Station::whole;
  };
  if (all.empty() || std::ranges::any_of(all, says)) return {};
  return refuse("station", "No computer would be left at which a manager may say what the others are.",
                "Say first which one is the office.");
}

}  // namespace wm::db
