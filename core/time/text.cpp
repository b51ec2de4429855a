#include "core/time/text.h"

#include <array>
#include <chrono>

#include "core/time/period.h"

namespace wm {

namespace {

/// The number that these digits write; nothing where one is no digit.
std::optional<int> number(std::string_view digits) {
  int value = 0;
  for (const char c : digits) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + (c - '0');
  }
  return value;
}

std::optional<int> below(std::string_view digits, int limit) {
  const auto value = number(digits);
  return value && *value < limit ? value : std::nullopt;
}

void append(std::string& text, int value, int width) {
  std::array<char, 4> digits{};
  for (int i = width; i-- > 0; value /= 10)
    digits[static_cast<std::size_t>(i)] = static_cast<char>('0' + value % 10);
  text.append(digits.data(), static_cast<std::size_t>(width));
}

}  // namespace

std::optional<Day> parse_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = number(text.substr(0, 4)), month = number(text.substr(5, 2)),
             day = number(text.substr(8, 2));
  if (!year || !month || !day || *year < 1900 || *year > 2999) return std::nullopt;
  const auto date = std::chrono::year(*year) / *month / *day;
  if (!date.ok()) return std::nullopt;
  return day_of({*year, *month, *day});
}

std::optional<Instant> parse_instant(std::string_view text) {
  if (text.size() != 20 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != 'Z') {
    return std::nullopt;
  }
  const auto day = parse_day(text.substr(0, 10));
  const auto hour = below(text.substr(11, 2), 24), minute = below(text.substr(14, 2), 60),
             second = below(text.substr(17, 2), 60);
  if (!day || !hour || !minute || !second) return std::nullopt;
  return Instant{std::int64_t{day->number} * 86400 + std::int64_t{*hour} * 3600 + std::int64_t{*minute} * 60 +
                 *second};
}

std::string to_text(Day d) {
  const CivilDate date = civil(d);
  std::string text;
  text.reserve(10);
  append(text, date.year, 4);
  text += '-';
  append(text, date.month, 2);
  text += '-';
  append(text, date.day, 2);
  return text;
}

std::string to_text(Instant t) {
  std::int64_t day = t.seconds / 86400, second = t.seconds % 86400;
  if (second < 0) {
    second += 86400;
    --day;
  }
  const int s = static_cast<int>(second);
  std::string text = to_text(Day{static_cast<std::int32_t>(day)});
  text.reserve(20);
  text += 'T';
  append(text, s / 3600, 2);
  text += ':';
  append(text, s / 60 % 60, 2);
  text += ':';
  append(text, s % 60, 2);
  text += 'Z';
  return text;
}

}  // namespace wm
