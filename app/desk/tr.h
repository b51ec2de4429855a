#pragma once
// The context in which the Desk's functions outside of any widget are translated.
#include <QCoreApplication>

namespace wm::app {

struct DeskWords {
  Q_DECLARE_TR_FUNCTIONS(DeskWords)
};

}  // namespace wm::app
