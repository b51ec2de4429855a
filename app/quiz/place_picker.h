#pragma once
// A place in a picture: pointed at with mouse or finger, or with the arrow keys.
#include <QImage>
#include <QMouseEvent>
#include <optional>

#include "app/quiz/answer_view.h"

namespace wm::app {

/// The arrow keys move the mark by a hundredth of the picture, with Shift by a thousandth.
class PlacePicker : public AnswerView {
  Q_OBJECT
 public:
  explicit PlacePicker(const AskedQuestion& asked, QWidget* parent = nullptr);
  void show_given(const teach::Given& given) override;
  QSize sizeHint() const override { return minimumSizeHint(); }
  QSize minimumSizeHint() const override { return {320, 320}; }
  /// Where the picture lies.
  QRect picture() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override { point(event->position().toPoint()); }
  void mouseMoveEvent(QMouseEvent* event) override {
    if (event->buttons() & Qt::LeftButton) point(event->position().toPoint());
  }

 private:
  void point(const QPoint& at);
  void put(teach::Point point);

  QByteArray file_;
  QImage drawn_;  // at the size last painted, without a mark
  std::optional<teach::Point> point_;
};

}  // namespace wm::app
