#include "app/widgets/ladder.h"

#include <QPainterPath>

namespace wm::app {

void draw_ladder(QPainter& painter, const QRectF& box, Rung rung, const QColor& ink, const QColor& faint,
                 const QColor& rails) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  const qreal rail = qMax(1.0, box.width() / 9), thick = box.height() / 4.4;
  painter.fillRect(QRectF(box.left(), box.top(), rail, box.height()), rails);
  painter.fillRect(QRectF(box.right() - rail, box.top(), rail, box.height()), rails);
  const qreal left = box.left() + rail, width = box.width() - 2 * rail;
  for (int step = 1; step <= 2; ++step) {
    const bool filled = static_cast<int>(rung) >= step;
    const qreal middle = box.top() + box.height() * (step == 1 ? 0.71 : 0.29);
    const qreal height = filled ? thick : qMax(1.0, thick / 4);
    painter.fillRect(QRectF(left, middle - height / 2, width, height), filled ? ink : faint);
  }
  painter.restore();
}

void draw_notches(QPainter& painter, const QRectF& box, int tier, const QColor& ink) {
  painter.save();
  if (tier > 6) {
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, QString::number(tier));
  } else {
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (int i = 0; i < tier; ++i)
      painter.fillRect(QRectF(box.left() + i * 7, box.top(), 4, box.height()), ink);
  }
  painter.restore();
}

}  // namespace wm::app
