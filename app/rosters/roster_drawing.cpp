// Draws one page of the grid, and what every form of the roster draws with. Black and white only: weight,
// height and words carry the meaning.
#include "app/rosters/roster_drawing.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include "app/rosters/roster_layout.h"
#include "app/widgets/ladder.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

constexpr double u = paper_unit;
constexpr double ladder_room = 14 * u;
constexpr double gap = 6 * u;
const QColor ink(Qt::black);
const QColor quiet(0x44, 0x44, 0x44);
const QColor hair(0x99, 0x99, 0x99);
const QColor pale(0xd8, 0xd8, 0xd8);
const QColor band(0xf2, 0xf2, 0xf2);

QColor colour(RosterInk chosen) { return chosen == RosterInk::plain ? ink : quiet; }

void text(QPainter& painter, const QRectF& box, const QFont& font, RosterInk chosen, const QString& words,
          int flags = Qt::AlignLeft | Qt::AlignVCenter) {
  draw_roster_text(painter, box, font, chosen, words, flags);
}

void ladder(QPainter& painter, QPointF at, Rung rung) {
  draw_roster_ladder(painter, QRectF(at, QSizeF(10 * u, 10 * u)), rung);
}

void draw_heads(QPainter& painter, const QRectF& body, const RosterTable& table, const RosterLayout& layout,
                const RosterSheet& sheet) {
  double x = body.left() + layout.name_width;
  int tier = -1;
  for (const std::size_t place : sheet.columns) {
    const RosterColumn& column = table.columns[place];
    if (column.tier != tier)
      draw_roster_tier(painter, {x, body.top()}, column.tier, Tr::tr("Tier %1").arg(column.tier),
                       layout.column_width);
    tier = column.tier;
    const double width = layout.column_width - gap;
    const QRectF box(x, body.top() + 15 * u, width, layout.head_height - 19 * u);
    const QFontMetricsF heavy(paper_font(8, true));
    const double machine_height = heavy.boundingRect(box, Qt::TextWordWrap, column.machine).height();
    text(painter, QRectF(x, box.top(), width, machine_height), paper_font(8, true), RosterInk::plain,
         column.machine, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
    text(painter, box.adjusted(0, machine_height, 0, 0), paper_font(7), RosterInk::quiet, column.mode,
         Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
    x += layout.column_width;
  }
}

void draw_cell(QPainter& painter, const QRectF& box, const RosterTable& table, const RosterCell& cell) {
  const QString detail = cell_detail(cell, table.zone, table.at);
  const bool full = cell.rung == Rung::independent;
  const bool two_lines = !detail.isEmpty();
  const QRectF words(box.left() + ladder_room, box.top() + (two_lines ? 0.8 * u : 0),
                     box.width() - ladder_room, two_lines ? 10 * u : box.height());
  if (cell.rung != Rung::barred) ladder(painter, {box.left(), box.top() + 4.5 * u}, cell.rung);
  text(painter, words, paper_font(8, full), cell.rung == Rung::barred ? RosterInk::quiet : RosterInk::plain,
       cell_words(cell));
  text(painter, QRectF(words.left(), box.top() + 10 * u, words.width(), 9 * u), paper_font(7),
       cell.overdue ? RosterInk::plain : RosterInk::quiet, detail);
}

void draw_restricted(QPainter& painter, const QRectF& box, const RosterCell& cell) {
  text(painter, box, paper_font(7, true), RosterInk::plain, restricted_words(cell.restricted),
       Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
}

void draw_row(QPainter& painter, const QRectF& box, const RosterTable& table, const RosterLayout& layout,
              const RosterSheet& sheet, const RosterRow& row) {
  text(painter, QRectF(box.left() + 4 * u, box.top(), layout.name_width - gap - 4 * u, box.height()),
       paper_font(9), RosterInk::plain, row.name, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap);
  double x = box.left() + layout.name_width;
  for (const std::size_t column : sheet.columns) {
    const QRectF cell(x, box.top(), layout.column_width - gap, layout.row_height);
    draw_cell(painter, cell, table, row.cells[column]);
    draw_restricted(painter, QRectF(cell.bottomLeft(), QPointF(cell.right(), box.bottom())),
                    row.cells[column]);
    x += layout.column_width;
  }
}

}  // namespace

void draw_roster_text(QPainter& painter, const QRectF& box, const QFont& font, RosterInk chosen,
                      const QString& words, int flags) {
  painter.setFont(font);
  painter.setPen(colour(chosen));
  painter.drawText(box, flags, words);
}

void draw_roster_ladder(QPainter& painter, const QRectF& box, Rung rung) {
  draw_ladder(painter, box, rung, ink, hair, ink);
}

void draw_roster_rule(QPainter& painter, double x, double y, double width, double weight) {
  painter.setPen(QPen(ink, weight * u));
  painter.drawLine(QPointF(x, y), QPointF(x + width, y));
}

void draw_roster_hair(QPainter& painter, double x, double y, double width) {
  painter.setPen(QPen(pale, 0.3 * u));
  painter.drawLine(QPointF(x, y), QPointF(x + width, y));
}

void draw_roster_tier(QPainter& painter, QPointF at, int tier, const QString& words, double width) {
  painter.save();
  painter.translate(at);
  painter.scale(u, u);
  const int drawn = tier > 6 ? 0 : tier;
  if (drawn > 0) draw_notches(painter, QRectF(0, 2, 40, 8), tier, ink);
  painter.restore();
  const double left = drawn > 0 ? (drawn * 7 + 3) * u : 0;
  text(painter, QRectF(at.x() + left, at.y(), width - left, 12 * u), paper_font(8, true), RosterInk::plain,
       words);
}

void draw_roster_legend(QPainter& painter, const QRectF& box) {
  double x = box.left();
  const QFont font = paper_font(7.5);
  const auto part = [&](std::optional<Rung> rung, const QString& words) {
    if (rung) {
      ladder(painter, {x, box.top() + 1 * u}, *rung);
      x += ladder_room;
    }
    const double width = QFontMetricsF(font).horizontalAdvance(words) + u;
    text(painter, QRectF(x, box.top(), width, 12 * u), font, RosterInk::plain, words);
    x += width + 14 * u;
  };
  part(Rung::independent, Tr::tr("unsupervised: without a supervisor"));
  part(Rung::supervised, Tr::tr("supervised: only with a supervisor"));
  part(std::nullopt, Tr::tr("no: not yet, or paused"));
  x = box.left();
  painter.translate(0, 12 * u);
  part(std::nullopt, Tr::tr("overdue: may through the day shown, re-check now"));
  part(std::nullopt, Tr::tr("assesses: also signs check-outs"));
  part(std::nullopt, Tr::tr("not listed: no"));
  painter.translate(0, -12 * u);
}

void draw_sheet(QPainter& painter, const QRectF& body, const RosterTable& table, const RosterLayout& layout,
                const RosterSheet& sheet) {
  const double width = layout.name_width + layout.column_width * static_cast<double>(sheet.columns.size());
  draw_heads(painter, body, table, layout, sheet);
  double y = body.top() + layout.head_height;
  draw_roster_rule(painter, body.left(), y, width, 1);
  for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
    const RosterRow& each = table.rows[sheet.rows[i]];
    const QRectF box(body.left(), y, width, row_height_of(each, layout, sheet.columns));
    if (i % 2 == 0) painter.fillRect(box.adjusted(0, 0.5 * u, 0, 0), band);
    draw_row(painter, box, table, layout, sheet, each);
    y += box.height();
  }
  if (sheet.rows.empty()) {
    text(painter, QRectF(body.left(), y + 4 * u, body.width(), 20 * u), paper_font(10), RosterInk::plain,
         Tr::tr("Nobody may use any of these machines."));
    y += 28 * u;
  }
  draw_roster_rule(painter, body.left(), y, width, 1);
  draw_roster_legend(painter, QRectF(body.left(), y + 5 * u, body.width(), roster_legend_height));
}

}  // namespace wm::app
