#pragma once
// Hours, and how the shop books, as the sentences of their records.
#include <QString>

#include "app/words/reader.h"
#include "app/words/record_words.h"

namespace wm::app {

/// "17:00–20:00"; a day's end is "midnight".
QString minutes_span(int from, int to);
/// "12:00–14:00, 17:00–20:00"
QString parts_words(const std::vector<db::DayPart>& parts);
/// "an hour", "90 minutes"
QString length_of_time(int minutes);
/// "24 December through 26 December", or one day
QString days_span(Day first, Day last, const Zone& zone);
/// "at most 4 hours a day; at most 2 hours on end, then half an hour's break"
QString takes_on_words(const db::TakesOn& takes);

QString hours_sentence(const db::Hours& hours, const RecordReader& reader);
QString hours_sentence(const db::WeekHours& hours, const RecordReader& reader);
QString hours_sentence(const db::OtherHours& hours, const RecordReader& reader);
QString hours_sentence(const db::Break& pause, const RecordReader& reader);
QString hours_sentence(const db::TakesOn& takes, const RecordReader& reader);
QString hours_sentence(const db::Lasts& lasts, const RecordReader& reader);
QString hours_sentence(const db::DiaryRules& rules, const RecordReader& reader);
QString hours_sentence(const db::Upkeep& upkeep, const RecordReader& reader);
QString hours_sentence(const db::Busy& busy, const RecordReader& reader);

}  // namespace wm::app
