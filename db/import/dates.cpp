#include "db/import/dates.h"

#include <array>
#include <charconv>
#include <chrono>

namespace wm::db::import {
namespace {

/// One to four digits at the front of `text`, which they are taken off; -1 where there are none.
int take_number(std::string_view& text) {
  std::size_t digits = 0;
  while (digits < text.size() && text[digits] >= '0' && text[digits] <= '9') ++digits;
  int value = -1;
  if (digits >= 1 && digits <= 4) std::from_chars(text.data(), text.data() + digits, value);
  text.remove_prefix(digits);
  return value;
}

bool take(std::string_view& text, char c) {
  if (!text.starts_with(c)) return false;
  text.remove_prefix(1);
  return true;
}

/// Three numbers with one mark between them, which is kept in `mark`.
std::optional<std::array<int, 3>> take_three(std::string_view& text, char& mark) {
  std::array<int, 3> numbers{};
  for (std::size_t i = 0; i < 3; ++i) {
    if (i == 1 && !text.empty()) mark = text.front();
    if (i > 0 && !take(text, mark)) return std::nullopt;
    if (mark == '.') take(text, ' ');
    numbers[i] = take_number(text);
    if (numbers[i] < 0) return std::nullopt;
  }
  return numbers;
}

std::optional<std::pair<int, int>> read_time(std::string_view text) {
  const int hour = take_number(text);
  const bool colon = take(text, ':');
  const bool two_digits = text.size() == 2;
  const int minute = take_number(text);
  if (!colon || !two_digits || !text.empty() || hour < 0 || hour > 23 || minute < 0 || minute > 59)
    return std::nullopt;
  return std::pair(hour, minute);
}

}  // namespace

std::optional<WrittenDate> read_date(std::string_view text) {
  char mark = 0;
  const auto n = take_three(text, mark);
  if (!n) return std::nullopt;
  WrittenDate date;
  if (mark == '-') date = {(*n)[0], (*n)[1], (*n)[2], false, {}};
  if (mark == '/') date = {(*n)[2], (*n)[0], (*n)[1], true, {}};
  if (mark == '.') date = {(*n)[2], (*n)[1], (*n)[0], false, {}};
  // Years with two digits are refused: nobody can tell a birth in 1926 from one in 2026.
  if (date.year < 1000 || date.first > 31 || date.second > 31) return std::nullopt;
  if (text.empty()) return date;
  if (!take(text, ' ') && !take(text, 'T')) return std::nullopt;
  while (take(text, ' ')) {
  }
  date.time = read_time(text);
  return date.time ? std::optional(date) : std::nullopt;
}

std::optional<DateOrder> order_shown(const WrittenDate& date) {
  if (!date.slashed || (date.first > 12) == (date.second > 12)) return std::nullopt;
  return date.first > 12 ? DateOrder::day_first : DateOrder::month_first;
}

bool is_ambiguous(const WrittenDate& date) {
  return date.slashed && date.first != date.second && date.first <= 12 && date.second <= 12;
}

std::optional<Day> day_meant(const WrittenDate& date, DateOrder order) {
  const bool swapped = date.slashed && order == DateOrder::day_first;
  const int month = swapped ? date.second : date.first;
  const int day = swapped ? date.first : date.second;
  const std::chrono::year_month_day civil{std::chrono::year{date.year},
                                          std::chrono::month{static_cast<unsigned>(month)},
                                          std::chrono::day{static_cast<unsigned>(day)}};
  if (!civil.ok() || date.year < 1900 || date.year > 2999) return std::nullopt;
  return Day{static_cast<std::int32_t>(std::chrono::sys_days{civil}.time_since_epoch().count())};
}

}  // namespace wm::db::import
