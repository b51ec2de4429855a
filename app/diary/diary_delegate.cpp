#include "app/diary/diary_delegate.h"

#include <QPainter>

#include "app/theme/theme.h"

namespace wm::app {
namespace {

constexpr int margin = 12, gap = 18;

bool heading(const DiaryRow& row) { return row.kind == DiaryRow::Kind::day; }

void paint_heading(QPainter& painter, const QRect& box, const QString& words) {
  painter.setFont(type(TypeSize::body, true));
  painter.setPen(palette().text);
  painter.drawText(box.adjusted(margin, 0, -margin, -7), Qt::AlignLeft | Qt::AlignBottom, words);
  painter.fillRect(QRect(box.left(), box.bottom() - 1, box.width(), 2), palette().quiet);
}

}  // namespace

DiaryDelegate::DiaryDelegate(const DiaryRows& rows, QObject* parent)
    : QStyledItemDelegate(parent), rows_(rows) {}

void DiaryDelegate::measure() {
  const QFontMetrics heavy(type(TypeSize::body, true));
  time_ = machine_ = people_ = 0;
  for (const DiaryRow& row : rows_.rows()) {
    if (heading(row) || row.kind == DiaryRow::Kind::nothing) continue;
    time_ = std::max(time_, heavy.horizontalAdvance(row.time) + gap);
    machine_ = std::max(machine_, heavy.horizontalAdvance(row.machine) + gap);
    people_ = std::max(people_, heavy.horizontalAdvance(row.people) + gap);
  }
}

bool DiaryDelegate::two_lines(const DiaryRow& row, int width) const {
  const int room = width - 2 * margin - columns_end();
  return QFontMetrics(type(TypeSize::small, row.trouble.has_value())).horizontalAdvance(row.reason) > room;
}

QSize DiaryDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const DiaryRow* row = rows_.row(index);
  if (!row) return {};
  const int width = option.rect.width();
  if (heading(*row)) return {0, row_height() + (index.row() == 0 ? 0 : 8)};
  return {0, two_lines(*row, width) ? row_height() + 16 : row_height()};
}

void DiaryDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
  const DiaryRow* row = rows_.row(index);
  if (!row) return;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const bool chosen = option.state & QStyle::State_Selected;
  if (heading(*row)) {
    paint_heading(*painter, option.rect, row->time);
  } else if (row->kind == DiaryRow::Kind::nothing) {
    painter->setFont(type(TypeSize::body));
    painter->setPen(wm::app::palette().quiet);
    painter->drawText(option.rect.adjusted(margin, 0, -margin, 0), Qt::AlignLeft | Qt::AlignVCenter,
                      row->time);
  } else {
    paint_row(*painter, option.rect, *row, chosen);
  }
  painter->restore();
}

void DiaryDelegate::paint_row(QPainter& painter, const QRect& box, const DiaryRow& row, bool chosen) const {
  const Palette& p = wm::app::palette();
  const bool slot = row.kind == DiaryRow::Kind::slot;
  if (chosen) {
    painter.setPen(QPen(p.full, 1.4));
    painter.setBrush(p.chosen);
    painter.drawRoundedRect(QRectF(box).adjusted(1, 1.5, -1, -1.5), 5, 5);
  } else {
    painter.fillRect(QRect(box.left(), box.bottom(), box.width(), 1), p.line);
  }
  QRect line = box.adjusted(margin, 0, -margin, 0);
  const bool two = two_lines(row, box.width());
  if (two) line.setHeight(row_height() - 4);
  const auto column = [&](int left, int width, const QString& words) {
    const QRect cell(line.left() + left, line.top(), std::min(width - 6, line.width() - left), line.height());
    painter.drawText(cell, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(words, Qt::ElideRight, cell.width()));
  };
  painter.setFont(type(TypeSize::body, slot));
  painter.setPen(slot ? p.full : p.text);
  column(0, time_, row.time);
  painter.setPen(p.text);
  column(time_, machine_, row.machine);
  column(time_ + machine_, people_, row.people);
  // What no longer works is not said quietly.
  painter.setFont(type(TypeSize::small, row.trouble.has_value()));
  painter.setPen(slot || row.trouble ? p.text : p.quiet);
  if (two)
    painter.drawText(QRect(line.left() + time_, line.bottom() - 6, line.width() - time_, 20),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(row.reason, Qt::ElideRight, line.width() - time_));
  else
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, row.reason);
}

}  // namespace wm::app
