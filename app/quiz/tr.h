#pragma once
// The context in which what the quiz station says is translated.
#include <QCoreApplication>

namespace wm::app {

struct QuizWords {
  Q_DECLARE_TR_FUNCTIONS(Quiz)
};

}  // namespace wm::app
