// How a run sheet is drawn.
#include <QPainter>
#include <QPainterPath>
#include <QScrollBar>

#include "app/checkouts/measure_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/theme/theme.h"

namespace wm::app {
namespace {

constexpr int mark_width = 90, again_width = 76, number_width = 30, bracket_width = 34, gap = 14, padding = 7;
constexpr int field_height = 28, field_width = 132, instrument_width = 92, field_gap = 6;

QString text(const std::string& s) { return QString::fromStdString(s); }

int wrapped(const QFont& font, const QString& words, int width) {
  if (words.isEmpty()) return 0;
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, words).height();
}

QFont line_font(const SheetLine& line) { return type(TypeSize::body, line.critical); }

void draw_tick(QPainter& painter, const QPointF& middle, const QColor& ink) {
  QPainterPath path(middle + QPointF(-9, 0));
  path.lineTo(middle + QPointF(-3, 7));
  path.lineTo(middle + QPointF(10, -8));
  painter.setPen(QPen(ink, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
}

void draw_place(QPainter& painter, const QPointF& middle, const QColor& ink) {
  painter.setPen(QPen(ink, 1.2));
  painter.drawLine(middle + QPointF(-12, 7), middle + QPointF(12, 7));
}

}  // namespace

SheetView::Columns SheetView::columns() const {
  const int right = viewport()->width() - 4;
  const int again = right - again_width, marks = again - 3 * mark_width;
  return {bracket_width, bracket_width + number_width, marks, again, right};
}

QRect SheetView::mark_box(const Row& row, Mark mark) const {
  const int top = row.top - verticalScrollBar()->value() + heads_;
  return {columns().marks + (static_cast<int>(mark) - 1) * mark_width, top, mark_width, row.height};
}

QRect SheetView::again_box(const Row& row) const {
  const int top = row.top - verticalScrollBar()->value() + heads_;
  return {columns().again, top, again_width, row.height};
}

QRect SheetView::place_of(std::size_t line, Mark mark) const {
  return mark == Mark::none ? again_box(rows_[line]) : mark_box(rows_[line], mark);
}

QRect SheetView::field_box(std::size_t line, bool instrument) const {
  const Row& row = rows_[line];
  const int said = row.words + row.says + row.measure;
  const int top = row.top - verticalScrollBar()->value() + heads_ + (row.height - said) / 2 + row.words +
                  row.says + field_gap / 2;
  const int left = columns().text + (instrument ? field_width + field_gap : 0);
  return {left, top, instrument ? instrument_width : field_width, field_height};
}

void SheetView::lay_out() {
  heads_ = QFontMetrics(type(TypeSize::small)).height() * 2 + 8;
  rows_.clear();
  const Columns c = columns();
  const int room = std::max(80, c.marks - c.text - 10);
  int top = gap / 2;
  std::size_t at = 0;
  if (sheet_)
    for (const SheetSection& section : sheet_->sections) {
      for (const SheetLine& line : section.lines) {
        Row row{top};
        row.words = wrapped(line_font(line), text(line.text), room);
        row.says = wrapped(type(TypeSize::small), text(line.says), room);
        if (measure_at(at))
          row.measure = field_height + field_gap + wrapped(type(TypeSize::small), said_of_measure(at), room);
        row.height = std::max(row_height() - 2, row.words + row.says + row.measure + 2 * padding);
        rows_.push_back(row);
        top += row.height;
        ++at;
      }
      top += gap;
    }
  const int room_down = viewport()->height() - heads_;
  verticalScrollBar()->setRange(0, std::max(0, top - gap / 2 - room_down));
  verticalScrollBar()->setPageStep(room_down);
  verticalScrollBar()->setSingleStep(row_height());
}

void SheetView::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(viewport()->rect(), wm::app::palette().paper);
  if (!sheet_) return;
  painter.save();
  painter.setClipRect(QRect(0, heads_, viewport()->width(), viewport()->height() - heads_));
  std::size_t first = 0;
  for (const SheetSection& section : sheet_->sections) {
    for (std::size_t i = 0; i < section.lines.size(); ++i) paint_row(painter, first + i);
    paint_bracket(painter, first, section.lines.size(), text(section.name));
    first += section.lines.size();
  }
  painter.restore();
  paint_heads(painter);
}

void SheetView::paint_heads(QPainter& painter) const {
  const Palette& p = wm::app::palette();
  const Columns c = columns();
  painter.setFont(type(TypeSize::small));
  painter.setPen(p.quiet);
  const auto column = [&](int left, int width, const QString& words) {
    painter.drawText(QRect(left + 4, 0, width - 8, heads_ - 4),
                     Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap, words);
  };
  column(c.marks, mark_width, tr("shown"));
  column(c.marks + mark_width, mark_width, tr("shown when asked"));
  column(c.marks + 2 * mark_width, mark_width, tr("not shown"));
  if (!first_only_) column(c.again, again_width, tr("again?"));
  painter.fillRect(QRect(c.number, heads_ - 1, c.right - c.number, 1), p.text);
}

void SheetView::paint_row(QPainter& painter, std::size_t line) const {
  const Palette& p = wm::app::palette();
  const Columns c = columns();
  const bool critical = lines_[line]->critical;
  const Row& row = rows_[line];
  const QRect box(c.number, row.top - verticalScrollBar()->value() + heads_, c.right - c.number, row.height);
  if (static_cast<int>(line) == line_ && !read_only_) painter.fillRect(box.adjusted(0, 1, 0, 0), p.chosen);
  // Two lines share a rule; it is heavy where either is critical.
  const auto rule = [&](int y, bool heavy) {
    painter.fillRect(QRect(box.left(), heavy ? y - 1 : y, box.width(), heavy ? 2 : 1),
                     heavy ? p.text : p.line);
  };
  const bool follows = line > 0 && rows_[line - 1].top + rows_[line - 1].height == row.top;
  rule(box.top(), critical || (follows && lines_[line - 1]->critical));
  rule(box.bottom() + 1, critical);
  paint_words(painter, line, box);
  paint_marks(painter, line);
  paint_again(painter, line);
}

void SheetView::paint_words(QPainter& painter, std::size_t line, const QRect& box) const {
  const Palette& p = wm::app::palette();
  const Columns c = columns();
  const SheetLine& each = *lines_[line];
  const int room = c.marks - c.text - 10;
  const Row& row = rows_[line];
  const int top = box.top() + (box.height() - row.words - row.says - row.measure) / 2;
  painter.setFont(type(TypeSize::small));
  painter.setPen(p.quiet);
  painter.drawText(QRect(c.number + 6, top + 1, number_width, box.height()), Qt::AlignLeft | Qt::AlignTop,
                   QString::number(line + 1));
  painter.drawText(QRect(c.text, top + row.words, room, row.says), Qt::TextWordWrap, text(each.says));
  painter.setFont(line_font(each));
  painter.setPen(p.text);
  painter.drawText(QRect(c.text, top, room, row.words), Qt::TextWordWrap, text(each.text));
  if (measure_at(line)) paint_measure(painter, line);
}

/// Where the fields are, what was typed there, and what it comes to.
void SheetView::paint_measure(QPainter& painter, std::size_t line) const {
  const Palette& p = wm::app::palette();
  const TypedMeasure& typed = on_it_.typed[line];
  const auto field = [&](const QRect& box, const QString& words, bool own) {
    painter.setPen(QPen(p.quiet, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter.setPen(own ? p.text : p.quiet);
    painter.drawText(box.adjusted(8, 0, -4, 0), Qt::AlignVCenter | Qt::AlignLeft, words);
  };
  const QRect read = field_box(line, false);
  painter.setFont(type(TypeSize::small));
  field(read, typed.measure, true);
  const QString marks = own_marks_words(*measure_at(line));
  field(field_box(line, true), typed.instrument.isEmpty() ? marks : typed.instrument,
        !typed.instrument.isEmpty());
  const bool out = verdict_at(line).value_or(Verdict::within) != Verdict::within;
  painter.setFont(type(TypeSize::small, out));
  painter.setPen(typed.measure.isEmpty() ? p.quiet : p.text);
  painter.drawText(
      QRect(columns().text, read.bottom() + field_gap / 2, columns().marks - columns().text - 10, 200),
      Qt::TextWordWrap, said_of_measure(line));
}

void SheetView::paint_marks(QPainter& painter, std::size_t line) const {
  const Palette& p = wm::app::palette();
  const Row& row = rows_[line];
  // What a measure says by itself.
  const auto verdict = verdict_at(line);
  const Mark by_measure = !verdict                           ? Mark::none
                          : *verdict != Verdict::within      ? Mark::not_shown
                          : on_it_.marks[line] == Mark::none ? Mark::shown
                                                             : Mark::none;
  for (Mark mark : {Mark::shown, Mark::shown_when_asked, Mark::not_shown}) {
    const QPointF middle = QRectF(mark_box(row, mark)).center();
    if (on_it_.marks[line] == mark)
      draw_tick(painter, middle, p.full);
    else if (by_measure == mark)
      draw_tick(painter, middle, p.half);
    else
      draw_place(painter, middle, p.quiet);
  }
  if (static_cast<int>(line) != line_ || read_only_ || !hasFocus()) return;
  // Where the next mark goes.
  const QRect box =
      in_again_ ? again_box(row) : mark_box(row, Mark::shown).united(mark_box(row, Mark::not_shown));
  painter.setPen(QPen(p.full, 1.6));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(QRectF(box).adjusted(2.5, 3.5, -2.5, -3.5), 5, 5);
}

void SheetView::paint_again(QPainter& painter, std::size_t line) const {
  if (first_only_ || on_it_.marks[line] != Mark::shown_when_asked) return;
  const Palette& p = wm::app::palette();
  const QRect box = again_box(rows_[line]);
  if (on_it_.again[line] == Mark::shown) return draw_tick(painter, QRectF(box).center(), p.full);
  if (on_it_.again[line] == Mark::none && !lines_[line]->critical)
    return draw_place(painter, QRectF(box).center(), p.quiet);
  painter.setFont(type(TypeSize::small, true));
  painter.setPen(p.text);
  const QString words = on_it_.again[line] == Mark::none        ? tr("yes", "must be shown again")
                        : on_it_.again[line] == Mark::not_shown ? tr("not shown")
                                                                : tr("when asked");
  painter.drawText(box.adjusted(2, 0, -2, 0), Qt::AlignCenter | Qt::TextWordWrap, words);
}

void SheetView::paint_bracket(QPainter& painter, std::size_t first, std::size_t count,
                              const QString& name) const {
  if (count == 0) return;
  const int scrolled = heads_ - verticalScrollBar()->value();
  const Row& last = rows_[first + count - 1];
  const qreal top = rows_[first].top + scrolled + 4, bottom = last.top + last.height + scrolled - 4;
  const qreal x = bracket_width - 12, length = bottom - top;
  painter.setPen(QPen(wm::app::palette().text, 1.4));
  painter.drawPolyline(QPolygonF{{x + 7, top}, {x, top}, {x, bottom}, {x + 7, bottom}});
  painter.save();
  painter.translate(0, bottom);
  painter.rotate(-90);
  // A short section has no room for a long word: it is set smaller before it is cut.
  QFont font = type(TypeSize::small, true);
  while (QFontMetrics(font).horizontalAdvance(name) > length && font.pixelSize() > 9)
    font.setPixelSize(font.pixelSize() - 1);
  painter.setFont(font);
  painter.drawText(QRectF(0, 0, length, x - 2), Qt::AlignCenter,
                   QFontMetrics(font).elidedText(name, Qt::ElideRight, static_cast<int>(length)));
  painter.restore();
}

}  // namespace wm::app
