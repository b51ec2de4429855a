#include "app/desk/strip_delegate.h"

#include <cmath>

#include "app/theme/theme.h"
#include "app/widgets/ladder.h"
#include "app/words/words.h"

namespace wm::app {

namespace {
constexpr qreal margin = 10, label_width = 184, ladder_width = 18, words_width = 112, through_width = 94;
}

StripDelegate::Columns StripDelegate::columns(const QRect& row) {
  const QRectF r(row);
  Columns c;
  const qreal wide = r.width() > 900 ? 40 : 0;
  c.label = QRectF(r.left() + margin, r.top(), label_width + wide, r.height());
  const qreal ladder_height = qMin(20.0, r.height() - 6);
  c.ladder = QRectF(c.label.right() + 8, r.center().y() - ladder_height / 2, ladder_width, ladder_height);
  c.words = QRectF(c.ladder.right() + 9, r.top(), words_width, r.height());
  c.through = QRectF(r.right() - through_width, r.top(), through_width, r.height());
  const qreal left = c.words.right() + 6;
  c.strip = QRectF(left, r.top() + 4, qMax(40.0, c.through.left() - 14 - left), r.height() - 7);
  return c;
}

QSize StripDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  const auto* model = static_cast<const StripModel*>(index.model());
  return {100,
          list_->height_of_row() + (model->row(index.row()).restricted.isEmpty() ? 0 : restricted_height)};
}

void StripDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
  const auto* model = static_cast<const StripModel*>(index.model());
  const StripRow& row = model->row(index.row());
  painter->save();
  if (row.heading())
    paint_heading(*painter, option.rect, row.tier);
  else
    paint_row(*painter, option.rect, row, index == list_->currentIndex());
  painter->restore();
}

void StripDelegate::paint_heading(QPainter& painter, const QRect& row, int tier) const {
  const QRectF r = QRectF(row).adjusted(margin, 0, 0, 0);
  const qreal width = tier > 6 ? 0 : tier * 7 + 3;
  if (tier <= 6)
    draw_notches(painter, QRectF(r.left(), r.center().y() - 5, width, 12), tier, wm::app::palette().text);
  painter.setFont(type(TypeSize::body, true));
  painter.setPen(wm::app::palette().text);
  painter.drawText(r.adjusted(width + 5, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                   StripModel::tr("Tier %1").arg(tier));
}

void StripDelegate::paint_row(QPainter& painter, const QRect& box, const StripRow& row, bool chosen) const {
  const Palette& p = wm::app::palette();
  const int below = row.restricted.isEmpty() ? 0 : restricted_height;
  const Columns c = columns(box.adjusted(0, 0, 0, -below));
  if (chosen) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(list_->hasFocus() ? p.full : p.half, list_->hasFocus() ? 1.6 : 1));
    painter.setBrush(p.chosen);
    painter.drawRoundedRect(QRectF(box).adjusted(1, 0.5, -1, -0.5), 4, 4);
  }
  const auto words = [&](const QRectF& where, const QString& text, bool heavy, const QColor& ink) {
    painter.setFont(type(TypeSize::body, heavy));
    painter.setPen(ink);
    painter.drawText(where, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(where.width())));
  };
  const QColor quiet = chosen ? p.text : p.quiet;
  words(c.label, target_label(row.target), chosen, p.text);
  draw_ladder(painter, c.ladder, row.rung, p.full, quiet, p.text);
  const QString standing = row.paused                 ? StripModel::tr("paused")
                           : row.rung == Rung::barred ? standing_words(row.rung)
                                                      : standing_cell(row.rung);
  words(c.words, standing, row.rung == Rung::independent, row.rung == Rung::barred ? quiet : p.text);
  if (below > 0) {
    const QRectF under(c.label.left(), c.label.bottom() - 5, c.words.right() - c.label.left(), below + 3);
    painter.setFont(type(TypeSize::small, true));
    painter.setPen(p.text);
    painter.drawText(
        under, Qt::AlignLeft | Qt::AlignVCenter,
        painter.fontMetrics().elidedText(row.restricted, Qt::ElideRight, static_cast<int>(under.width())));
  }
  const Strips& strips = list_->strips();
  const Scale scale{strips.from, strips.to, c.strip.left(), c.strip.width()};
  draw_strip(painter, c.strip, scale, row.steps, strips.today);
  painter.setPen(QPen(p.text, 1, Qt::DotLine));
  const qreal today = std::round(scale.x(strips.today)) + 0.5;
  painter.drawLine(QPointF(today, box.top()), QPointF(today, box.bottom() + 1));
  words(c.through, row.through, false, row.rung == Rung::barred ? quiet : p.text);
}

}  // namespace wm::app
