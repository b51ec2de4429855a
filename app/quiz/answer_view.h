#pragma once
// Where a question is answered: one widget for each kind.
#include <QWidget>

#include "app/quiz/banks.h"
#include "core/teach/attempt.h"
#include "core/teach/paper.h"

namespace wm::app {

/// What an answer's widget needs to know of the question that it is for.
struct AskedQuestion {
  const teach::Question* question = nullptr;
  teach::Asked asked;
  const teach::Wording* wording = nullptr;
  const teach::Wording* beside = nullptr;  // null: none
  const db::Issued* issued = nullptr;      // its pictures
  int size = 20;                           // of the type, in pixels
};

class AnswerView : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;
  /// Shows what was given so far.
  virtual void show_given(const teach::Given& given) = 0;

 signals:
  void given(const wm::teach::Given& given);
};

/// The widget for the question's kind.
AnswerView* answer_view(const AskedQuestion& asked, QWidget* parent);

}  // namespace wm::app
