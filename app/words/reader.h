#pragma once
// What sentences about somebody's answer need to know beside the answer.
#include <QString>
#include <functional>

#include "app/words/birthdays.h"
#include "app/words/days.h"
#include "db/facts.h"

namespace wm::app {

struct AnswerReader {
  /// A person's whole name.
  std::function<QString(const PersonId&)> name_of;
  /// The journal's entry of that id, or null.
  std::function<const db::Entry*(const RecordId&)> record_of;
  PersonId person;  // whom the answer is about
  QString called;   // and what they are called in a sentence
  Zone zone = Zone::utc();
  Instant now;  // whose year dates leave out
  Birthdays birthdays;

  /// Whether a day on which something begins to hold would tell the person's birthday. What ends never does:
  /// nobody gets younger.
  bool hides(Instant begins) const { return hides(begins, person); }
  bool hides(Instant begins, const PersonId& other) const { return birthdays.on(other, zone.day(begins)); }
  QString last(Instant until) const { return last_day(until, zone, now); }
  QString day(Instant t) const { return day_words(t, zone, now); }
  QString from(Instant t) const { return moment_words(t, zone, now); }
};

}  // namespace wm::app
