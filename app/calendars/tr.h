#pragma once
// Where this folder's words are translated.
#include <QCoreApplication>

namespace wm::app {

struct CalendarWords {
  Q_DECLARE_TR_FUNCTIONS(CalendarWords)
};

}  // namespace wm::app
