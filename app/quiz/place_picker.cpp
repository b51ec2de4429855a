#include "app/quiz/place_picker.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "app/quiz/sat_attempt.h"
#include "app/quiz/tr.h"
#include "app/theme/theme.h"

namespace wm::app {
namespace {
constexpr int whole = 1000;
}  // namespace

PlacePicker::PlacePicker(const AskedQuestion& asked, QWidget* parent)
    : AnswerView(parent), file_(asked.picture) {
  setObjectName("place");
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setCursor(Qt::CrossCursor);
  setAccessibleName(QuizWords::tr("The picture: point at a place, or move the mark with the arrow keys"));
}

void PlacePicker::show_given(const teach::Given& given) {
  const auto* pointed = std::get_if<teach::Pointed>(&given);
  point_ = pointed ? std::optional(pointed->point) : std::nullopt;
  update();
}

QRect PlacePicker::picture() const {
  const int side = std::max(1, std::min(width(), height()) - 6);
  return {3, 3, side, side};
}

void PlacePicker::put(teach::Point point) {
  point.x = std::clamp(point.x, 0, whole);
  point.y = std::clamp(point.y, 0, whole);
  point_ = point;
  setAccessibleDescription(
      QuizWords::tr("The mark is %1 % across and %2 % down").arg(point.x / 10).arg(point.y / 10));
  update();
  emit given(teach::Pointed{point});
}

void PlacePicker::point(const QPoint& at) {
  const QRect box = picture();
  if (!box.contains(at)) return;
  put({(at.x() - box.left()) * whole / box.width(), (at.y() - box.top()) * whole / box.height()});
}

void PlacePicker::keyPressEvent(QKeyEvent* event) {
  const int step = event->modifiers() & Qt::ShiftModifier ? 1 : 10;
  const bool arrow = event->key() >= Qt::Key_Left && event->key() <= Qt::Key_Down;
  if (!arrow && event->key() != Qt::Key_Space) return QWidget::keyPressEvent(event);
  teach::Point to = point_.value_or(teach::Point{whole / 2, whole / 2});
  // The first key shows the mark in the middle; from there it moves.
  if (point_) {
    to.x += event->key() == Qt::Key_Right ? step : event->key() == Qt::Key_Left ? -step : 0;
    to.y += event->key() == Qt::Key_Down ? step : event->key() == Qt::Key_Up ? -step : 0;
  }
  put(to);
}

void PlacePicker::paintEvent(QPaintEvent*) {
  const QRect box = picture();
  const int pixels = qRound(box.width() * devicePixelRatioF());
  if (drawn_.width() != pixels) drawn_ = marked_picture(file_, pixels, teach::Unanswered{});
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.drawImage(box, drawn_);
  painter.setPen(QPen(hasFocus() ? p.full : p.line, hasFocus() ? 3 : 1));
  painter.drawRect(box);
  if (!point_) return;
  const QPointF at(box.left() + point_->x * box.width() / double(whole),
                   box.top() + point_->y * box.height() / double(whole));
  // On the picture's own white, whatever the shade.
  for (const auto& [colour, width] :
       {std::pair(QColor(Qt::white), 7), {wm::app::palette(Shade::light).full, 3}}) {
    painter.setPen(QPen(colour, width));
    painter.drawEllipse(at, 14, 14);
    painter.drawLine(at - QPointF(24, 0), at + QPointF(24, 0));
    painter.drawLine(at - QPointF(0, 24), at + QPointF(0, 24));
  }
}

}  // namespace wm::app
