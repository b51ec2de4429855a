#include "app/desk/need_list.h"

#include <QPainter>

#include "app/theme/theme.h"

namespace wm::app {

namespace {

void draw_box(QPainter& painter, const QPointF& at, bool holds) {
  const Palette& p = wm::app::palette();
  painter.setRenderHint(QPainter::Antialiasing);
  if (holds) {
    painter.setPen(QPen(p.full, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF tick[] = {at + QPointF(1, 6), at + QPointF(4.5, 10), at + QPointF(11, 1.5)};
    painter.drawPolyline(tick, 3);
  } else {
    painter.setPen(QPen(p.text, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(at + QPointF(1, 1), QSizeF(10, 10)));
  }
}

int text(QPainter* painter, const QRect& where, const QString& words, const QFont& font, const QColor& ink) {
  const QRect used = QFontMetrics(font).boundingRect(where, Qt::TextWordWrap, words);
  if (painter) {
    painter->setFont(font);
    painter->setPen(ink);
    painter->drawText(QRect(where.topLeft(), QSize(where.width(), used.height())), Qt::TextWordWrap, words);
  }
  return used.height();
}

QString spoken(const std::vector<NeedLine>& lines) {
  QStringList words;
  for (const NeedLine& line : lines)
    words << (line.holds ? NeedList::tr("there: %1") : NeedList::tr("missing: %1"))
                 .arg(line.detail.isEmpty() ? line.what : line.what + ", " + line.detail);
  return words.join(". ");
}

}  // namespace

void NeedList::set(std::vector<NeedLine> lines) {
  lines_ = std::move(lines);
  setAccessibleName(spoken(lines_));
  setMinimumHeight(heightForWidth(width()));
  updateGeometry();
  update();
}

int NeedList::lay_out(int width, QPainter* painter) const {
  const Palette& p = wm::app::palette();
  int y = 2;
  for (const NeedLine& line : lines_) {
    const int left = 24 + line.depth * 20;
    const QRect room(left, y, qMax(40, width - left - 4), 400);
    if (painter) draw_box(*painter, QPointF(left - 22, y + 3), line.holds);
    y += text(painter, room, line.what, type(TypeSize::body, !line.holds), p.text);
    if (!line.detail.isEmpty())
      y += text(painter, room.translated(0, y - room.top()), line.detail, type(TypeSize::small), p.quiet);
    y += 6;
  }
  return y;
}

int NeedList::heightForWidth(int width) const { return lay_out(width, nullptr); }

void NeedList::resizeEvent(QResizeEvent*) { setMinimumHeight(heightForWidth(width())); }

void NeedList::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  lay_out(width(), &painter);
}

}  // namespace wm::app
