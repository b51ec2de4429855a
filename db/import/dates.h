#pragma once
// Dates as people write them in spreadsheets.
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "core/time/period.h"

namespace wm::db::import {

/// How 3/4/2026 is meant.
enum class DateOrder { month_first, day_first };

/// A date as written: 2026-03-14 and 14.03.2026 say which number is the month, 3/14/2026 does not by itself.
/// A time HH:MM (24 h) may follow after a space or a T.
struct WrittenDate {
  int year = 0, first = 0, second = 0;  // with slashes the two numbers as they stand, else month and day
  bool slashed = false;
  std::optional<std::pair<int, int>> time;
};

/// Nothing where it is no date written so. Whether there is such a day is for `date_of`.
std::optional<WrittenDate> read_date(std::string_view text);

/// The order that this date shows by itself: one of the two numbers is above 12. Nothing where it shows none.
std::optional<DateOrder> order_shown(const WrittenDate& date);
/// Whether it is another day in one order than in the other.
bool is_ambiguous(const WrittenDate& date);
/// The day meant; nothing where the calendar has none such, or outside the years 1900 to 2999.
std::optional<Day> day_meant(const WrittenDate& date, DateOrder order);

}  // namespace wm::db::import
