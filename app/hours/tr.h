#pragma once
// Where this folder's words are translated.
#include <QCoreApplication>

namespace wm::app {

struct HoursWords {
  Q_DECLARE_TR_FUNCTIONS(HoursWords)
};

}  // namespace wm::app
