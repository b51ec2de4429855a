#pragma once
// The zones in which a calendar's times are meant: of the IANA list, or as the calendar itself defines them
// (VTIMEZONE; RFC 5545, 3.6.5).
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/calendar/lines.h"
#include "core/time/zone.h"

namespace wm::calendar {

/// A zone of the IANA list, or clocks that go by a list of changes. A cheap value: copies share the data.
class CalendarZone {
 public:
  /// `at`: from when on clocks are `ahead` seconds ahead of UTC.
  struct Change {
    Instant at;
    std::int64_t ahead = 0;
  };
  CalendarZone(Zone zone);  // NOLINT(google-explicit-constructor): it is one
  /// Clocks are `ahead` seconds ahead of UTC up to the first of the changes, which are in order of time, one
  /// at a time.
  CalendarZone(std::int64_t ahead, const std::vector<Change>& changes);

  /// When clocks first show this time, or the moment at which they jump over it.
  Instant instant(LocalTime local) const;
  /// The first instant of this date, or of the one after where clocks jump over it.
  Instant start(Day day) const;

 private:
  /// Between two changes. `until`: what clocks have shown up to its end, the latest.
  struct Stretch {
    Instant from;
    std::int64_t ahead = 0, until = 0;  // seconds; `until` as if the wall's time were UTC
  };
  std::variant<std::shared_ptr<const std::vector<Stretch>>, Zone> by_;
};

/// So many years, one for each change at least, are gone through by the rules of one file before it is
/// refused: each takes libical up to 80 microseconds.
constexpr std::size_t most_zone_years = 60'000, most_years_a_zone = 10'000;
constexpr std::size_t most_changes_a_zone = 10'000, most_parts_a_zone = 1'000;

/// What the lines of one calendar name. The calendar must outlive it.
class Zones {
 public:
  /// Times without a zone are the shop's. `years_left` is how many may still be gone through in the file.
  Zones(const Zone& shop, const Component& calendar, std::size_t& years_left);
  /// No zone has a name, and times from the year 1 on are taken: within a zone's own definition, which begin
  /// long ago.
  explicit Zones(const CalendarZone& only) : unnamed_(only), first_year_(1) {}

  const CalendarZone& unnamed() const { return unnamed_; }
  int first_year() const { return first_year_; }
  /// The zone that a line means by the name. Nothing where there is none, or where it can't be followed; that
  /// is told: at each line which names an unknown one, and once where the definition is wrong.
  std::optional<CalendarZone> named(const std::string& name, const ContentLine& line, Mistakes& mistakes);

 private:
  /// By name alone, whether the calendar defines it or not. Nothing where that is no mistake yet.
  std::optional<CalendarZone> find(const std::string& name, Mistakes& mistakes);

  CalendarZone unnamed_;
  int first_year_ = 1900;
  std::map<std::string, const Component*> defined_;
  std::map<std::string, std::optional<CalendarZone>> found_;
  std::size_t* years_left_ = nullptr;
};

}  // namespace wm::calendar
