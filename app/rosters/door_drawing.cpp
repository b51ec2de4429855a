// Draws one page of a roster for a door. Black and white only, as the grid is.
#include <QCoreApplication>
#include <QFontMetricsF>

#include "app/rosters/door_layout.h"
#include "app/rosters/roster_drawing.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

constexpr double u = paper_unit;
constexpr double gap = 10 * u;

class DoorPainter {
 public:
  DoorPainter(QPainter& painter, const QRectF& body, const RosterTable& table, const DoorPage& page)
      : painter_(painter), body_(body), table_(table), page_(page) {}

  void draw(const DoorPiece& piece) const {
    const QRectF box(body_.left(), body_.top() + piece.top, body_.width(), piece.height);
    switch (piece.kind) {
      case DoorPiece::Kind::tier:
        return tier(box, piece);
      case DoorPiece::Kind::machine:
        return machine(box, piece);
      case DoorPiece::Kind::group:
        return group(box, piece);
      case DoorPiece::Kind::names:
        return names(box, piece);
      case DoorPiece::Kind::line:
        return line(box, piece);
    }
  }

 private:
  double points() const { return page_.points; }

  void tier(const QRectF& box, const DoorPiece& piece) const {
    const int number = table_.columns[piece.column].tier;
    draw_roster_tier(
        painter_, box.topLeft(), number,
        piece.continued ? Tr::tr("Tier %1, continued").arg(number) : Tr::tr("Tier %1").arg(number),
        box.width());
  }

  void machine(const QRectF& box, const DoorPiece& piece) const {
    const RosterColumn& column = table_.columns[piece.column];
    QString name = column.mode.isEmpty()
                       ? column.machine
                       : Tr::tr("%1, %2", "a machine, its mode").arg(column.machine, column.mode);
    if (piece.continued) name = Tr::tr("%1, continued").arg(name);
    draw_roster_rule(painter_, box.left(), box.top() + 2 * u, box.width(), 1);
    draw_roster_text(painter_, box.adjusted(0, 4 * u, 0, 0), paper_font(points() * 1.4, true),
                     RosterInk::plain, name);
  }

  void group(const QRectF& box, const DoorPiece& piece) const {
    const double size = 1.1 * points() * u;
    draw_roster_ladder(painter_, QRectF(box.left(), box.center().y() - size / 2, size, size), piece.rung);
    draw_roster_text(painter_, box.adjusted(size + 4 * u, 0, 0, 0), paper_font(points(), true),
                     RosterInk::plain, piece.words);
  }

  void line(const QRectF& box, const DoorPiece& piece) const {
    draw_roster_text(painter_, box, paper_font(points()), RosterInk::plain, piece.words);
  }

  void names(const QRectF& box, const DoorPiece& piece) const {
    const std::size_t lines = (piece.rows.size() + page_.columns - 1) / page_.columns;
    for (std::size_t i = 0; i < piece.rows.size(); ++i) {
      const std::size_t column = i / lines;
      const QRectF line(box.left() + static_cast<double>(column) * page_.column_width,
                        box.top() + static_cast<double>(i % lines) * page_.row_height,
                        page_.column_width - gap, page_.row_height);
      name(line, table_.rows[piece.rows[i]], table_.rows[piece.rows[i]].cells[piece.column]);
    }
  }

  /// A long name is drawn smaller rather than cut.
  QFont name_font(const QString& name, double width) const {
    const double needed = QFontMetricsF(paper_font(points())).horizontalAdvance(name);
    return paper_font(needed <= width ? points() : points() * width / needed * 0.99);
  }

  void name(const QRectF& line, const RosterRow& row, const RosterCell& cell) const {
    const QFont day_font = paper_font(points() - 1.5, cell.overdue);
    const QString day = door_day(cell, table_);
    const double day_width = QFontMetricsF(day_font).horizontalAdvance(day) + u;
    const double width = line.width() - day_width - 4 * u;
    draw_roster_text(painter_, QRectF(line.left(), line.top(), width, line.height()),
                     name_font(row.name, width), RosterInk::plain, row.name);
    draw_roster_text(painter_, QRectF(line.right() - day_width, line.top(), day_width, line.height()),
                     day_font, cell.overdue ? RosterInk::plain : RosterInk::quiet, day,
                     Qt::AlignRight | Qt::AlignVCenter);
    draw_roster_hair(painter_, line.left(), line.bottom(), line.width());
  }

  QPainter& painter_;
  const QRectF& body_;
  const RosterTable& table_;
  const DoorPage& page_;
};

}  // namespace

void draw_door(QPainter& painter, const QRectF& body, const RosterTable& table, const DoorPage& page) {
  const DoorPainter door(painter, body, table, page);
  for (const DoorPiece& piece : page.pieces) door.draw(piece);
  if (page.pieces.empty())
    draw_roster_text(painter, QRectF(body.topLeft(), QSizeF(body.width(), 24 * u)), paper_font(10),
                     RosterInk::plain, Tr::tr("Nobody may use any machine."));
  draw_roster_text(painter,
                   QRectF(body.left(), body.bottom() - door_legend_height, body.width(), door_legend_height),
                   paper_font(7.5), RosterInk::plain,
                   Tr::tr("Not listed: may not use it.  Overdue: may through the day shown, re-check now."));
}

}  // namespace wm::app
