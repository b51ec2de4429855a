#pragma once
// Instants and days: the two kinds of time that must not be mixed.
#include <compare>
#include <cstdint>

namespace wm {

/// A whole second in UTC, counted from 1970-01-01T00:00:00Z; leap seconds are not counted (POSIX time).
struct Instant {
  std::int64_t seconds = 0;
  friend auto operator<=>(const Instant&, const Instant&) = default;
};

/// A civil date of the proleptic Gregorian calendar, counted in days from 1970-01-01.
struct Day {
  std::int32_t number = 0;
  friend auto operator<=>(const Day&, const Day&) = default;
};

constexpr Instant operator+(Instant t, std::int64_t seconds) { return {t.seconds + seconds}; }
constexpr Instant operator-(Instant t, std::int64_t seconds) { return {t.seconds - seconds}; }
constexpr Day operator+(Day d, std::int32_t days) { return {d.number + days}; }

/// The years that the program knows: 1900-01-01T00:00:00Z to 2999-12-31T23:59:59Z.
inline constexpr Instant first_instant{-2208988800};
inline constexpr Instant last_instant{32503679999};
inline constexpr Day first_day{-25567};
inline constexpr Day last_day{376199};

}  // namespace wm
