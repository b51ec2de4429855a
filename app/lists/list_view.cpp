#include "app/lists/list_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include "app/theme/theme.h"

namespace wm::app {
namespace {

/// One or two lines of text; a chosen row on the chosen ground, a struck one with a line through it.
class RowPainter : public QStyledItemDelegate {
 public:
  RowPainter(const ListModel& model, QObject* parent) : QStyledItemDelegate(parent), model_(model) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const ListRow& row = model_.rows()[static_cast<std::size_t>(index.row())];
    const Palette& colours = palette();
    painter->save();
    if (option.state & QStyle::State_Selected) painter->fillRect(option.rect, colours.chosen);
    painter->setPen(colours.line);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (static_cast<std::size_t>(index.column()) < row.cells.size())
      draw_cell(*painter, option.rect.adjusted(8, 0, -8, -1), row, index.column());
    painter->restore();
  }

 private:
  static void draw_line(QPainter& painter, const QRect& box, const QFont& font, const QColor& colour,
                        const QString& words) {
    painter.setFont(font);
    painter.setPen(colour);
    const QString shown = QFontMetrics(font).elidedText(words, Qt::ElideRight, box.width());
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, shown);
  }

  /// One line where it fits, else two smaller ones.
  static void draw_whole(QPainter& painter, const QRect& box, const QFont& font, const QColor& colour,
                         const QString& words) {
    if (QFontMetrics(font).horizontalAdvance(words) <= box.width())
      return draw_line(painter, box, font, colour, words);
    QFont smaller = type(TypeSize::small);
    smaller.setStrikeOut(font.strikeOut());
    painter.setFont(smaller);
    painter.setPen(colour);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, words);
  }

  static void draw_cell(QPainter& painter, const QRect& box, const ListRow& row, int column) {
    const ListCell& cell = row.cells[static_cast<std::size_t>(column)];
    QFont font = type(TypeSize::body, cell.heavy);
    font.setStrikeOut(row.struck);
    const QColor colour = row.struck ? palette().quiet : palette().text;
    if (cell.quiet.isEmpty()) return draw_whole(painter, box, font, colour, cell.text);
    QRect upper = box, lower = box;
    upper.setBottom(box.top() + box.height() * 11 / 20);
    lower.setTop(upper.bottom());
    draw_line(painter, upper, font, colour, cell.text);
    draw_line(painter, lower, type(TypeSize::small), palette().quiet, cell.quiet);
  }

  const ListModel& model_;
};

bool moves_the_choice(int key) {
  return key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown;
}

}  // namespace

ListView::ListView(std::vector<ListColumn> columns, QWidget* parent)
    : QTableView(parent), model_(new ListModel(this)) {
  model_->set_columns(std::move(columns));
  setModel(model_);
  setItemDelegate(new RowPainter(*model_, this));
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setShowGrid(false);
  setTabKeyNavigation(false);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerItem);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(row_height());
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  connect(this, &QTableView::doubleClicked, this, [this] { emit opened(chosen()); });
}

void ListView::set_rows(std::vector<ListRow> rows) {
  const QString before = chosen();
  filling_ = true;
  model_->set_rows(std::move(rows));
  filling_ = false;
  if (model_->rowCount() == 0) return emit choice_changed({});
  if (before.isEmpty() || !choose(before)) setCurrentIndex(model_->index(0, 0));
  emit choice_changed(chosen());
}

bool ListView::choose(const QString& id) {
  const int place = model_->place_of(id);
  if (place < 0) return false;
  setCurrentIndex(model_->index(place, 0));
  scrollTo(currentIndex(), EnsureVisible);
  return true;
}

QString ListView::chosen() const {
  const QModelIndex current = currentIndex();
  return current.isValid() ? model_->rows()[static_cast<std::size_t>(current.row())].id : QString();
}

void ListView::led_by(QLineEdit* field) {
  field->installEventFilter(this);
  connect(field, &QLineEdit::returnPressed, this, [this] {
    if (!chosen().isEmpty()) emit opened(chosen());
  });
}

bool ListView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (moves_the_choice(key->key()) && key->modifiers() == Qt::NoModifier) {
      QTableView::keyPressEvent(key);
      return true;
    }
  }
  return QTableView::eventFilter(watched, event);
}

void ListView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  if (!filling_ && current.row() != previous.row()) emit choice_changed(chosen());
}

void ListView::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  int taken = 0, free = 0;
  for (const ListColumn& column : model_->columns()) {
    taken += column.width;
    free += column.width == 0;
  }
  for (int i = 0; i < model_->columnCount(); ++i) {
    const int width = model_->columns()[static_cast<std::size_t>(i)].width;
    setColumnWidth(i, width > 0 ? width : std::max(80, (viewport()->width() - taken) / std::max(1, free)));
  }
}

void ListView::keyPressEvent(QKeyEvent* event) {
  if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
      event->modifiers() == Qt::NoModifier && !chosen().isEmpty())
    return emit opened(chosen());
  QTableView::keyPressEvent(event);
}

}  // namespace wm::app
