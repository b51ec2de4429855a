#pragma once
// Choices as large rows: one of them, several, or steps to be put in order. By keyboard, mouse and finger.
#include "app/quiz/answer_view.h"

namespace wm::app {

/// Up and Down go from row to row, Space or a row's digit chooses; steps are moved with Ctrl and an arrow, or
/// picked up with Space and put down with it again; or dragged.
class ChoiceRows : public AnswerView {
  Q_OBJECT
 public:
  explicit ChoiceRows(const AskedQuestion& asked, QWidget* parent = nullptr);
  void show_given(const teach::Given& given) override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override { return {600, heightForWidth(600)}; }
  QRect row_rect(int row) const;
  int current() const { return current_; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  bool is_order() const { return std::holds_alternative<teach::InOrder>(asked_.kind); }
  bool is_one() const { return std::holds_alternative<teach::OneRight>(asked_.kind); }
  int count() const { return static_cast<int>(rows_.size()); }
  int row_at(const QPoint& point) const;
  void choose(int row);
  void move_to(int row);
  void go_to(int row);
  void tell();
  void say_current();
  int text_height(int width, int row) const;
  void paint_row(QPainter& painter, int row) const;
  void paint_mark(QPainter& painter, const QRect& box, int row) const;

  AskedQuestion asked_;
  std::vector<std::size_t> rows_;  // choices as they stand
  std::vector<bool> chosen_;       // by choice
  bool moved_ = false;             // steps: whether somebody put them in this order
  bool held_ = false;              // the current step goes along with the arrows
  bool dragged_ = false;
  int current_ = 0;
};

}  // namespace wm::app
