#pragma once
// The shop's time zone: which civil date an instant falls on, and when a civil date starts.
#include <memory>
#include <string>
#include <string_view>

#include "core/problem.h"
#include "core/time/instant.h"
#include "core/time/period.h"

namespace wm {

/// Hours and minutes on the shop's wall clock beside the date.
struct LocalTime {
  Day day;
  int hour = 0, minute = 0, second = 0;
  friend auto operator<=>(const LocalTime&, const LocalTime&) = default;
};

/// An IANA time zone, by the system's own zone files. A cheap value: copies share the data.
class Zone {
 public:
  /// Refuses a name that is not in the IANA list ("localtime", "right/…", paths and offsets among them).
  static Expected<Zone> named(std::string_view iana_name);
  static Zone utc();

  const std::string& name() const;
  /// The civil date at t.
  Day day(Instant t) const;
  /// The first instant whose civil date is `d` or later; clocks that skip or repeat midnight included.
  Instant start(Day d) const;
  /// What the wall clock shows at t.
  LocalTime local(Instant t) const;
  /// The instant at which the wall clock shows this; where it does so twice the first, where never (clocks
  /// went forward) the moment of the jump.
  Instant instant(LocalTime local) const;

 private:
  struct Data;
  explicit Zone(std::shared_ptr<const Data> data);
  std::shared_ptr<const Data> data_;
};

/// The last instant plus one that something good for `period` from `at` covers: start(end(day(at), period) +
/// 1 day).
Instant cover_end(const Zone& zone, Instant at, Period period);

}  // namespace wm
