#pragma once
// One question at a time: its words and its answer, how much time is left, and which questions are open.
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/quiz/answer_view.h"
#include "app/quiz/run.h"
#include "app/quiz/station_type.h"

namespace wm::app {

/// Squares, one a question: filled where it is answered, with a bar above where it is to be come back to.
class QuestionStrip : public QWidget {
  Q_OBJECT
 public:
  explicit QuestionStrip(QWidget* parent = nullptr);
  void show_sitting(const Sitting& sitting);
  QSize sizeHint() const override;

 signals:
  void chosen(std::size_t question);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;

 private:
  QRect square(std::size_t i) const;
  struct Square {
    bool answered = false, later = false;
  };
  std::vector<Square> squares_;
  std::size_t at_ = 0;
};

class QuestionView : public QWidget {
  Q_OBJECT
 public:
  explicit QuestionView(QuizRun& run, QWidget* parent = nullptr);
  /// Draws the question that is being sat anew; the answer has the cursor.
  void show_question();
  /// The time alone.
  void show_time();

 signals:
  void hand_in();
  void leave();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QLayout* top();
  QLayout* foot();
  void step(int by);
  void next_left();
  void toggle_later();
  void toggle_beside();
  void toggle_large();
  void show_words(const Sitting& sitting);
  void show_answer(const Sitting& sitting);
  void show_foot(const Sitting& sitting);
  std::string other_language(const Sitting& sitting) const;

  QuizRun& run_;
  QLabel *quiz_, *place_, *time_, *critical_;
  QLabel *words_, *beside_words_, *how_;
  QScrollArea* scroll_;
  QVBoxLayout* body_;
  AnswerView* answer_ = nullptr;
  QuestionStrip* strip_;
  StationButton *back_, *later_, *next_, *hand_in_, *beside_, *large_, *leave_;
};

}  // namespace wm::app
