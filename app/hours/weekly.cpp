#include "app/hours/weekly.h"

#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <tuple>

#include "app/hours/hours_book.h"
#include "app/words/hours_words.h"

namespace wm::app {

std::vector<HoursLine> hours_of(const Session& session, const PersonId& person) {
  std::vector<HoursLine> lines;
  for (const auto& each : said_of<db::Hours>(session, "hours", person)) lines.push_back({each.id, each.fact});
  std::ranges::stable_sort(lines, {}, [](const HoursLine& line) {
    return std::tuple(line.hours.weekday, line.hours.from_minute, line.hours.to_minute);
  });
  return lines;
}

QString weekday_words(int weekday) { return QLocale().standaloneDayName(weekday + 1); }

QString hours_words(const db::Hours& hours) { return minutes_span(hours.from_minute, hours.to_minute); }

std::optional<int> read_minute(const QString& text) {
  static const QRegularExpression form(R"(^\s*(\d{1,2})(?:[:.hH]?(\d{2}))?\s*([ap])?\.?\s*(?:m\.?)?\s*$)",
                                       QRegularExpression::CaseInsensitiveOption);
  const auto found = form.match(text);
  if (!found.hasMatch()) return std::nullopt;
  int hour = found.captured(1).toInt();
  const int minute = found.captured(2).toInt();
  const QString half = found.captured(3).toLower();
  if (!half.isEmpty()) {
    if (hour < 1 || hour > 12) return std::nullopt;
    hour = hour % 12 + (half == "p" ? 12 : 0);
  }
  if (minute > 59 || hour > 24 || (hour == 24 && minute > 0)) return std::nullopt;
  return hour * 60 + minute;
}

}  // namespace wm::app
