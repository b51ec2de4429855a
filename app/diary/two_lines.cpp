#include "app/diary/two_lines.h"

#include <QPainter>

#include "app/theme/theme.h"

namespace wm::app {

QSize TwoLines::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
  return {0, row_height() + 12};
}

void TwoLines::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const Palette& p = wm::app::palette();
  const bool chosen = option.state & QStyle::State_Selected;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  if (chosen) {
    painter->setPen(QPen(p.full, 1.4));
    painter->setBrush(p.chosen);
    painter->drawRoundedRect(QRectF(option.rect).adjusted(1, 1.5, -1, -1.5), 5, 5);
  } else {
    painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), p.line);
  }
  const QRect box = option.rect.adjusted(9, 5, -9, -6);
  const auto elided = [&](const QString& words, int room) {
    return painter->fontMetrics().elidedText(words, Qt::ElideRight, room);
  };
  painter->setFont(type(TypeSize::small));
  painter->setPen(p.text);
  const QString right = index.data(right_role).toString();
  painter->drawText(box, Qt::AlignRight | Qt::AlignTop, right);
  const int taken = right.isEmpty() ? 0 : painter->fontMetrics().horizontalAdvance(right) + 12;
  painter->setPen(p.quiet);
  painter->drawText(box, Qt::AlignLeft | Qt::AlignBottom,
                    elided(index.data(below_role).toString(), box.width()));
  painter->setFont(type(TypeSize::body, chosen));
  painter->setPen(p.text);
  painter->drawText(box, Qt::AlignLeft | Qt::AlignTop,
                    elided(index.data(Qt::DisplayRole).toString(), box.width() - taken));
  painter->restore();
}

}  // namespace wm::app
