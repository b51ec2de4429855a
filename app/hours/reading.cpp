#include "app/hours/reading.h"

#include <QRegularExpression>
#include <algorithm>

#include "app/hours/tr.h"
#include "app/hours/weekly.h"

namespace wm::app {
namespace {

std::optional<db::DayPart> read_part(const QString& text) {
  static const QRegularExpression dash(QStringLiteral("\\s*[-–—]\\s*"));
  const QStringList ends = text.split(dash);
  if (ends.size() != 2) return std::nullopt;
  const auto from = read_minute(ends[0]), to = read_minute(ends[1]);
  if (!from || !to || *from >= *to) return std::nullopt;
  return db::DayPart{*from, *to};
}

}  // namespace

tl::unexpected<Problem> mistyped(const QString& where, const QString& what, const QString& remedy) {
  return tl::make_unexpected(Problem{where.toStdString(), what.toStdString(), remedy.toStdString()});
}

Expected<std::vector<db::DayPart>> read_parts(const QString& text) {
  std::vector<db::DayPart> out;
  static const QRegularExpression between(QStringLiteral("[,;]"));
  for (const QString& each : text.split(between, Qt::SkipEmptyParts)) {
    if (each.trimmed().isEmpty()) continue;
    const auto part = read_part(each.trimmed());
    if (!part)
      return mistyped(HoursWords::tr("hours"), HoursWords::tr("“%1” are no hours").arg(each.trimmed()),
                      HoursWords::tr("Type them as 12:00-14:00, 17:30-20:00; a day ends at 24"));
    out.push_back(*part);
  }
  std::ranges::sort(out, {}, &db::DayPart::from_minute);
  for (std::size_t i = 1; i < out.size(); ++i)
    if (out[i].from_minute < out[i - 1].to_minute)
      return mistyped(HoursWords::tr("hours"), HoursWords::tr("Some of these hours overlap"),
                      HoursWords::tr("Type each hour once"));
  return out;
}

Expected<std::optional<int>> read_number(const QString& text, const QString& where) {
  if (text.trimmed().isEmpty()) return std::optional<int>();
  bool good = false;
  const int number = text.trimmed().toInt(&good);
  if (good) return std::optional(number);
  return mistyped(where, HoursWords::tr("“%1” is no whole number").arg(text.trimmed()),
                  HoursWords::tr("Type one, or leave it empty"));
}

Expected<std::optional<int>> read_minutes(const QString& text, const QString& where) {
  static const QRegularExpression form(
      QStringLiteral("^\\s*(?:(\\d{1,2})\\s*(?::(\\d{2})|h)|(\\d{1,4})\\s*(?:min)?)\\s*$"));
  if (text.trimmed().isEmpty()) return std::optional<int>();
  const auto found = form.match(text);
  if (!found.hasMatch())
    return mistyped(where, HoursWords::tr("“%1” is no length of time").arg(text.trimmed()),
                    HoursWords::tr("Type minutes, or hours as 1:30"));
  if (!found.captured(3).isEmpty()) return std::optional(found.captured(3).toInt());
  return std::optional(60 * found.captured(1).toInt() + found.captured(2).toInt());
}

}  // namespace wm::app
