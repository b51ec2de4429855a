#pragma once
// Where a question is answered: one widget for each kind.
#include <QByteArray>
#include <QWidget>
#include <string>
#include <vector>

#include "core/teach/attempt.h"
#include "core/teach/bank.h"

namespace wm::app {

/// What an answer's widget needs to know of the question that it is for: copies, since it may outlive the
/// attempt by a moment.
struct AskedQuestion {
  teach::Kind kind;
  std::vector<std::size_t> order;            // of the choices, as they stand
  std::vector<std::string> choices, beside;  // by place in the bank; the second language's may be none
  QByteArray picture;                        // its file
  int size = 20;                             // of the type, in pixels
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
