#pragma once
// Every string of words/ is translated in one context.
#include <QCoreApplication>

namespace wm::app {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

}  // namespace wm::app
