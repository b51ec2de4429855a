#include "app/rosters/roster_grid.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

#include "app/theme/theme.h"
#include "app/widgets/ladder.h"
#include "app/words/standing_words.h"

namespace wm::app {
namespace {

constexpr int head_height = 66;
constexpr int pad = 8;
constexpr int ladder_room = 24;
constexpr int restricted_height = 17;  // the line below, where something is restricted

void draw_text(QPainter& painter, const QRect& box, const QFont& font, const QColor& colour,
               const QString& words) {
  painter.setFont(font);
  painter.setPen(colour);
  painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                   QFontMetrics(font).elidedText(words, Qt::ElideRight, box.width()));
}

class CellPainter : public QStyledItemDelegate {
 public:
  CellPainter(const RosterModel& model, QObject* parent) : QStyledItemDelegate(parent), model_(model) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Palette& colours = wm::app::palette();
    const RosterTable& table = model_.table();
    const RosterCell& cell =
        table.rows[static_cast<std::size_t>(index.row())].cells[static_cast<std::size_t>(index.column())];
    painter->save();
    if (option.state & (QStyle::State_Selected | QStyle::State_HasFocus))
      painter->fillRect(option.rect, colours.chosen);
    painter->setPen(colours.line);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    draw_cell(*painter, option.rect.adjusted(pad, 0, -2, -1), cell, cell_detail(cell, table.zone, table.at));
    painter->restore();
  }

 private:
  static void draw_cell(QPainter& painter, const QRect& box, const RosterCell& cell, const QString& detail) {
    const Palette& colours = wm::app::palette();
    if (!cell.restricted.isEmpty()) {
      QRect under = box;
      under.setTop(box.bottom() - restricted_height);
      draw_text(painter, under, type(TypeSize::small, true), colours.text, restricted_words(cell.restricted));
      RosterCell open = cell;
      open.restricted.clear();
      return draw_cell(painter, box.adjusted(0, 0, 0, -restricted_height), open, detail);
    }
    const bool full = cell.rung == Rung::independent;
    const QRect words = box.adjusted(ladder_room, 0, 0, 0);
    if (cell.rung != Rung::barred)
      draw_ladder(painter, QRectF(box.left(), box.top() + (box.height() - 18) / 2.0, 16, 18), cell.rung,
                  full ? colours.full : colours.half, colours.line, colours.text);
    const QColor ink = cell.rung == Rung::barred ? colours.quiet : colours.text;
    if (detail.isEmpty()) return draw_text(painter, words, type(TypeSize::body, full), ink, cell_words(cell));
    QRect upper = words, lower = words;
    upper.setBottom(words.top() + words.height() * 11 / 20);
    lower.setTop(upper.bottom() - 1);
    draw_text(painter, upper, type(TypeSize::body, full), ink, cell_words(cell));
    draw_text(painter, lower, type(TypeSize::small), cell.overdue ? colours.text : colours.quiet, detail);
  }

  const RosterModel& model_;
};

/// Machines on top: the tier over its first column, then the machine and its mode.
class MachineHeader : public QHeaderView {
 public:
  MachineHeader(const RosterModel& model, QWidget* parent)
      : QHeaderView(Qt::Horizontal, parent), model_(model) {
    setSectionResizeMode(QHeaderView::Fixed);
  }
  QSize sizeHint() const override { return {QHeaderView::sizeHint().width(), head_height}; }

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    const Palette& colours = wm::app::palette();
    const auto& columns = model_.table().columns;
    const RosterColumn& column = columns[static_cast<std::size_t>(section)];
    painter->save();
    painter->fillRect(rect, colours.paper);
    painter->setPen(colours.quiet);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    const QRect box = rect.adjusted(pad, 5, -2, -3);
    if (section == 0 || columns[static_cast<std::size_t>(section) - 1].tier != column.tier)
      draw_tier(*painter, box, column.tier);
    const bool mode = !column.mode.isEmpty();
    const QRect name(box.left(), box.top() + 20, box.width(), mode ? 19 : 36);
    painter->setFont(type(TypeSize::body, true));
    painter->setPen(colours.text);
    painter->drawText(name, Qt::AlignLeft | Qt::AlignVCenter | (mode ? 0 : Qt::TextWordWrap), column.machine);
    if (mode) draw_text(*painter, name.translated(0, 19), type(TypeSize::small), colours.quiet, column.mode);
    painter->restore();
  }

 private:
  static void draw_tier(QPainter& painter, const QRect& box, int tier) {
    const int drawn = std::min(tier, 6) * 7 + 4;
    draw_notches(painter, QRectF(box.left(), box.top() + 2, 60, 11), tier, wm::app::palette().text);
    if (tier > 6) return;
    draw_text(painter, QRect(box.left() + drawn, box.top(), box.width() - drawn, 16),
              type(TypeSize::small, true), wm::app::palette().text,
              QCoreApplication::translate("wm::app::Roster", "Tier %1").arg(tier));
  }

  const RosterModel& model_;
};

/// People at the left, in the size of the rows' words.
class NameHeader : public QHeaderView {
 public:
  NameHeader(const RosterModel& model, QWidget* parent) : QHeaderView(Qt::Vertical, parent), model_(model) {
    setSectionResizeMode(QHeaderView::Fixed);
  }
  QSize sizeHint() const override {
    int width = 120;
    const QFontMetrics metrics(type(TypeSize::body));
    for (const RosterRow& row : model_.table().rows)
      width = std::max(width, metrics.horizontalAdvance(row.name) + 2 * pad);
    return {std::min(width, 190), QHeaderView::sizeHint().height()};
  }

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    const Palette& colours = wm::app::palette();
    const auto* view = static_cast<const QTableView*>(parent());
    painter->save();
    painter->fillRect(rect, view->currentIndex().row() == section ? colours.chosen : colours.paper);
    painter->setPen(colours.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    const QString& name = model_.table().rows[static_cast<std::size_t>(section)].name;
    const QRect box = rect.adjusted(pad, 0, -pad, 0);
    const bool fits = QFontMetrics(type(TypeSize::body)).horizontalAdvance(name) <= box.width();
    painter->setFont(type(fits ? TypeSize::body : TypeSize::small));
    painter->setPen(colours.text);
    painter->drawText(box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, name);
    painter->restore();
  }

 private:
  const RosterModel& model_;
};

int needed_width(const RosterTable& table) {
  const QFontMetrics heavy(type(TypeSize::body, true)), small(type(TypeSize::small));
  int needed = 90;
  for (const RosterColumn& column : table.columns)
    for (const QString& word : column.machine.split(' '))
      needed = std::max(needed, heavy.horizontalAdvance(word));
  for (const RosterRow& row : table.rows)
    for (const RosterCell& cell : row.cells)
      needed = std::max({needed, ladder_room + heavy.horizontalAdvance(cell_words(cell)),
                         ladder_room + small.horizontalAdvance(cell_detail(cell, table.zone, table.at))});
  return needed + pad + 6;
}

}  // namespace

RosterGrid::RosterGrid(QWidget* parent) : QTableView(parent), model_(new RosterModel(this)) {
  setModel(model_);
  setItemDelegate(new CellPainter(*model_, this));
  setHorizontalHeader(new MachineHeader(*model_, this));
  setVerticalHeader(new NameHeader(*model_, this));
  verticalHeader()->setDefaultSectionSize(row_height());
  setShowGrid(false);
  setSelectionMode(SingleSelection);
  setTabKeyNavigation(false);
  setCornerButtonEnabled(false);
  setHorizontalScrollMode(ScrollPerItem);
  connect(this, &QTableView::doubleClicked, this, &RosterGrid::open_current);
  // The name of the row that the cursor is in is marked too.
  connect(selectionModel(), &QItemSelectionModel::currentChanged, verticalHeader()->viewport(),
          qOverload<>(&QWidget::update));
}

void RosterGrid::show_table(RosterTable table) {
  const QModelIndex before = currentIndex();
  needed_width_ = needed_width(table);
  model_->set_table(std::move(table));
  for (std::size_t row = 0; row < this->table().rows.size(); ++row) {
    const bool some = std::ranges::any_of(this->table().rows[row].cells,
                                          [](const RosterCell& cell) { return !cell.restricted.isEmpty(); });
    setRowHeight(static_cast<int>(row),
                 verticalHeader()->defaultSectionSize() + (some ? restricted_height : 0));
  }
  set_widths();
  if (before.isValid()) setCurrentIndex(model_->index(before.row(), before.column()));
}

void RosterGrid::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  set_widths();
}

/// As wide as the words need; where all fit, they share the room, up to half as much again.
void RosterGrid::set_widths() {
  const int columns = model_->columnCount();
  if (columns == 0) return;
  const int shared = viewport()->width() / columns;
  const int width = std::clamp(shared, needed_width_, needed_width_ * 3 / 2);
  for (int i = 0; i < columns; ++i) setColumnWidth(i, width);
}

void RosterGrid::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return open_current();
  QTableView::keyPressEvent(event);
}

void RosterGrid::open_current() {
  const QModelIndex current = currentIndex();
  if (!current.isValid()) return;
  emit opened(table().rows[static_cast<std::size_t>(current.row())].person,
              table().columns[static_cast<std::size_t>(current.column())].target);
}

}  // namespace wm::app
