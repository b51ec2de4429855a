#pragma once
// A number, typed; while it is typed it is told how it was read, or why it can't be.
#include <QLabel>
#include <QLineEdit>

#include "app/quiz/answer_view.h"

namespace wm::app {

class NumberField : public AnswerView {
  Q_OBJECT
 public:
  explicit NumberField(const AskedQuestion& asked, QWidget* parent = nullptr);
  void show_given(const teach::Given& given) override;

 private:
  void judge();

  teach::Unit unit_;
  QLineEdit* field_;
  QLabel* judged_;
};

}  // namespace wm::app
