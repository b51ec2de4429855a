// What the sheet does; how it is drawn stands in sheet_paint.cpp.
#include "app/checkouts/sheet_view.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QScrollBar>
#include <algorithm>

#include "app/words/labels.h"

namespace wm::app {

SheetView::SheetView(QWidget* parent) : QAbstractScrollArea(parent) {
  setObjectName("sheet");
  setAccessibleName(tr("Run sheet"));
  setFrameShape(NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  make_fields();
}

void SheetView::show_sheet(const Sheet* sheet, OnSheet on_it) {
  sheet_ = sheet;
  lines_ = sheet ? lines_of(*sheet) : std::vector<const SheetLine*>{};
  on_it_ = std::move(on_it);
  on_it_.marks.resize(lines_.size(), Mark::none);
  on_it_.again.resize(lines_.size(), Mark::none);
  on_it_.typed.resize(lines_.size());
  line_ = 0;
  in_again_ = false;
  before_.clear();
  lay_out();
  verticalScrollBar()->setValue(0);
  place_fields();
  tell_screen_reader();
  viewport()->update();
}

void SheetView::take(OnSheet on_it) {
  on_it_ = std::move(on_it);
  on_it_.marks.resize(lines_.size(), Mark::none);
  on_it_.again.resize(lines_.size(), Mark::none);
  on_it_.typed.resize(lines_.size());
  before_.clear();  // a step back would undo what another marked
  lay_out();
  go_to(line_);
}

int SheetView::typing() const { return read_->hasFocus() || marks_apart_->hasFocus() ? line_ + 1 : 0; }

void SheetView::set_read_only(bool read_only) {
  read_only_ = read_only;
  place_fields();
  viewport()->update();
}

bool SheetView::open(std::size_t line) const {
  if (measure_at(line) && on_it_.marks[line] != Mark::not_shown && !verdict_at(line)) return true;
  if (on_it_.marks[line] == Mark::none) return !verdict_at(line);
  return lines_[line]->critical && on_it_.marks[line] == Mark::shown_when_asked &&
         on_it_.again[line] != Mark::shown;
}

int SheetView::next_open() const {
  const int count = static_cast<int>(lines_.size());
  for (int step = 1; step <= count; ++step)
    if (const int line = (line_ + step) % count; open(static_cast<std::size_t>(line))) return line;
  return line_;
}

void SheetView::go_to(int line) {
  if (lines_.empty()) return;
  const int before = line_;
  line_ = std::clamp(line, 0, static_cast<int>(lines_.size()) - 1);
  const auto at = static_cast<std::size_t>(line_);
  in_again_ = in_again_ && line_ == before && on_it_.marks[at] == Mark::shown_when_asked;
  keep_in_sight();
  place_fields();
  tell_screen_reader();
  viewport()->update();
}

void SheetView::keep_in_sight() {
  if (lines_.empty()) return;
  const Row& row = rows_[static_cast<std::size_t>(line_)];
  QScrollBar* bar = verticalScrollBar();
  const int room = viewport()->height() - heads_;
  if (row.top < bar->value()) bar->setValue(line_ == 0 ? 0 : row.top);
  if (row.top + row.height > bar->value() + room) bar->setValue(row.top + row.height - room + 2);
}

void SheetView::set_mark(Mark mark) {
  if (lines_.empty() || read_only_) return;
  before_.push_back({on_it_.marks, on_it_.again, line_});
  const auto at = static_cast<std::size_t>(line_);
  if (in_again_) {
    on_it_.again[at] = mark;
  } else {
    on_it_.marks[at] = mark;
    // A second mark stands for the time after asking, and for nothing else.
    if (mark != Mark::shown_when_asked) on_it_.again[at] = Mark::none;
  }
  tell_screen_reader();
  viewport()->update();
  emit marked();
}

void SheetView::undo() {
  if (before_.empty() || read_only_) return;
  const Before before = std::move(before_.back());
  before_.pop_back();
  on_it_.marks = before.marks;
  on_it_.again = before.again;
  go_to(before.line);
  emit marked();
}

bool SheetView::move(int key) {
  const bool twice = on_it_.marks[static_cast<std::size_t>(line_)] == Mark::shown_when_asked;
  switch (key) {
    case Qt::Key_Up:
      go_to(line_ - 1);
      return true;
    case Qt::Key_Down:
      go_to(line_ + 1);
      return true;
    case Qt::Key_Home:
      go_to(0);
      return true;
    case Qt::Key_End:
      go_to(static_cast<int>(lines_.size()) - 1);
      return true;
    case Qt::Key_PageUp:
      go_to(line_ - 8);
      return true;
    case Qt::Key_PageDown:
      go_to(line_ + 8);
      return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      go_on();
      return true;
    case Qt::Key_Right:
    case Qt::Key_Left:
      in_again_ = twice && key == Qt::Key_Right;
      go_to(line_);
      return true;
    default:
      return false;
  }
}

void SheetView::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Undo)) return undo();
  const bool plain = !(event->modifiers() & ~Qt::KeypadModifier);
  if (lines_.empty() || !plain) return QAbstractScrollArea::keyPressEvent(event);
  if (move(event->key())) return;
  switch (event->key()) {
    case Qt::Key_M:
      return go_to_field();
    case Qt::Key_1:
      return set_mark(Mark::shown);
    case Qt::Key_2:
      return set_mark(Mark::shown_when_asked);
    case Qt::Key_3:
      return set_mark(Mark::not_shown);
    case Qt::Key_0:
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
      return set_mark(Mark::none);
    default:
      QAbstractScrollArea::keyPressEvent(event);
  }
}

void SheetView::mousePressEvent(QMouseEvent* event) {
  const QPoint at = event->position().toPoint();
  if (at.y() < heads_) return;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const QRect again = again_box(rows_[i]);
    if (at.y() < again.top() || at.y() > again.bottom()) continue;
    go_to(static_cast<int>(i));
    if (measure_at(i) && field_box(i, false).united(field_box(i, true)).contains(at)) return go_to_field();
    in_again_ = on_it_.marks[i] == Mark::shown_when_asked && again.contains(at);
    if (in_again_) return set_mark(on_it_.again[i] == Mark::shown ? Mark::none : Mark::shown);
    for (Mark mark : {Mark::shown, Mark::shown_when_asked, Mark::not_shown})
      if (mark_box(rows_[i], mark).contains(at)) return set_mark(on_it_.marks[i] == mark ? Mark::none : mark);
    return;
  }
}

void SheetView::focusInEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusInEvent(event);
  viewport()->update();
}

void SheetView::focusOutEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusOutEvent(event);
  viewport()->update();
}

void SheetView::resizeEvent(QResizeEvent* event) {
  QAbstractScrollArea::resizeEvent(event);
  lay_out();
  // What stands below may take room while somebody marks.
  if (hasFocus() || typing() > 0) keep_in_sight();
  place_fields();
}

void SheetView::tell_screen_reader() {
  if (lines_.empty()) return setAccessibleDescription({});
  const auto at = static_cast<std::size_t>(line_);
  const SheetLine& line = *lines_[at];
  QStringList said{tr("line %1 of %2").arg(line_ + 1).arg(lines_.size())};
  if (line.critical) said << tr("critical");
  said << QString::fromStdString(line.text);
  if (!line.says.empty()) said << QString::fromStdString(line.says);
  if (measure_at(at)) said << said_of_measure(at);
  said << mark_words(on_it_.marks[at]);
  if (on_it_.marks[at] == Mark::shown_when_asked)
    said << tr("the second time: %1").arg(mark_words(on_it_.again[at]));
  setAccessibleDescription(said.join(", "));
  QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&changed);
}

}  // namespace wm::app
