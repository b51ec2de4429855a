#pragma once
// One question, what is odd about it, and where the choices went, as words beside bars.
#include <QFrame>

#include "core/teach/bank_figures.h"

namespace wm::app {

class QuestionCard : public QFrame {
  Q_OBJECT
 public:
  /// `look`: null where nothing is odd about it.
  QuestionCard(const teach::BankFigures& bank, const teach::QuestionFigures& figures,
               const teach::LookAt* look, QWidget* parent = nullptr);
};

}  // namespace wm::app
