#include "app/widgets/strip.h"

#include <cmath>

#include "app/theme/theme.h"

namespace wm::app {

namespace {

// Qt's own pattern brushes are drawn in device pixels and vanish on dense screens.
void hatch(QPainter& painter, const QRectF& area, const QColor& ink) {
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(ink, 1.6));
  // Lines start on a common grid, so that one strip's hatching runs on through its steps.
  constexpr int pitch = 5;
  const int first = static_cast<int>(std::floor((area.left() - area.height()) / pitch)) * pitch;
  for (int x = first; x < area.right() + area.height(); x += pitch)
    painter.drawLine(QPointF(x, area.bottom() + 1), QPointF(x + area.height() + 1, area.top()));
  painter.restore();
}

struct Drawing {
  QPainter& painter;
  const QRectF& box;
  const Scale& scale;

  qreal height(Rung rung) const {
    return rung == Rung::independent ? box.height() - 2 : (box.height() - 2) / 2;
  }

  QRectF area(Instant from, Instant to, Rung rung) const {
    const qreal left = qMax(scale.x(from), box.left()), right = qMin(scale.x(to), box.right());
    return QRectF(left, box.bottom() - height(rung), qMax(0.0, right - left), height(rung));
  }

  void past(Instant from, Instant to, Rung rung) const {
    const Palette& p = palette();
    painter.fillRect(area(from, to, rung), rung == Rung::independent ? p.full : p.half);
  }

  void future(Instant from, Instant to, Rung rung) const {
    const QRectF part = area(from, to, rung);
    if (part.width() > 0) hatch(painter, part, rung == Rung::independent ? palette().full : palette().half);
  }

  void tick(Instant at) const {
    const qreal x = std::round(scale.x(at));
    if (x < box.left() || x > box.right()) return;
    painter.setPen(QPen(palette().text, 1.4));
    painter.drawLine(QPointF(x, box.top() - 3), QPointF(x, box.bottom()));
    painter.drawLine(QPointF(x - 3, box.top() - 3), QPointF(x + 3, box.top() - 3));
  }
};

}  // namespace

qreal Scale::x(Instant t) const {
  const auto span = static_cast<qreal>(qMax<std::int64_t>(1, to.seconds - from.seconds));
  return left + width * static_cast<qreal>(t.seconds - from.seconds) / span;
}

Instant Scale::at(qreal x) const {
  const auto span = static_cast<qreal>(to.seconds - from.seconds);
  return from + static_cast<std::int64_t>(span * (x - left) / qMax(1.0, width));
}

void draw_strip(QPainter& painter, const QRectF& box, const Scale& scale,
                const std::vector<TimelineStep>& steps, Instant today) {
  painter.save();
  const Drawing drawing{painter, box, scale};
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const Instant from = steps[i].at, to = i + 1 < steps.size() ? steps[i + 1].at : scale.to;
    const Rung rung = steps[i].standing;
    if (rung == Rung::barred) continue;
    if (from < today) drawing.past(from, std::min(to, today), rung);
    if (to > today) drawing.future(std::max(from, today), to, rung);
  }
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(QPen(palette().quiet, 1));
  painter.drawLine(box.bottomLeft(), box.bottomRight());
  painter.setRenderHint(QPainter::Antialiasing);
  for (std::size_t i = 1; i < steps.size(); ++i)
    if (steps[i].at > today && steps[i].standing < steps[i - 1].standing) drawing.tick(steps[i].at);
  painter.restore();
}

}  // namespace wm::app
