#pragma once
// When somebody is usually in, week by week: what the Diary's free times rest on.
#include <QString>
#include <optional>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct HoursLine {
  RecordId id;
  db::Hours hours;
};
/// Of that person and of entries joined to theirs, from Monday on.
std::vector<HoursLine> hours_of(const Session& session, const PersonId& person);

/// 0 is Monday.
QString weekday_words(int weekday);
/// "17:00–20:00"; a day's end is "midnight".
QString hours_words(const db::Hours& hours);
/// "17", "17:30", "1730", "5:30 pm" as a minute of the day, 0 to 1440; nothing where it is no time.
std::optional<int> read_minute(const QString& text);

}  // namespace wm::app
