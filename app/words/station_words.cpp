#include "app/words/station_words.h"

#include "app/words/tr.h"

namespace wm::app {

QString station_words(db::Station station) {
  switch (station) {
    case db::Station::whole:
      return Words::tr("everything");
    case db::Station::front:
      return Words::tr("front desk");
    case db::Station::machine:
      return Words::tr("tablet at the machines");
    case db::Station::quiz:
      return Words::tr("quiz station");
    case db::Station::office:
      return Words::tr("office");
  }
  return {};
}

QString station_takes(db::Station station) {
  switch (station) {
    case db::Station::whole:
      return Words::tr("All that can be entered in the shop is taken here.");
    case db::Station::front:
      return Words::tr(
          "People, papers, bookings, who is here and what happened are taken here, and quizzes. Check-outs "
          "are "
          "signed at the machines; what the shop goes by is the office's.");
    case db::Station::machine:
      return Words::tr(
          "Check-outs are marked and signed here, and machines started and left, put out of service or "
          "changed. "
          "People's details and papers are the front desk's.");
    case db::Station::quiz:
      return Words::tr("Members go through lessons and take quizzes here, and nothing else.");
    case db::Station::office:
      return Words::tr(
          "What the shop goes by is entered here: rulebook, roles, appointments, hours, lessons and "
          "questions; and "
          "what the front desk takes, but quizzes.");
  }
  return {};
}

}  // namespace wm::app
