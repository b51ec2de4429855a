// What the sheet does; how it is drawn stands in sheet_paint.cpp.
#include "app/checkouts/sheet_view.h"

#include <QAccessible>
#include <QApplication>
#include <QKeyEvent>
#include <QScrollBar>
#include <QScroller>
#include <QTimer>
#include <QTouchEvent>
#include <algorithm>
#include <utility>

#include "app/words/labels.h"

namespace wm::app {

SheetView::SheetView(QWidget* parent) : QAbstractScrollArea(parent) {
  setObjectName("sheet");
  setAccessibleName(tr("Run sheet"));
  setFrameShape(NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  make_fields();
  scroll_by_finger();
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

void SheetView::set_first_only(bool first_only) {
  if (first_only == first_only_) return;
  first_only_ = first_only;
  in_again_ = false;
  lay_out();
  go_to(line_);
}

bool SheetView::open(std::size_t line) const {
  if (measure_at(line) && on_it_.marks[line] != Mark::not_shown && !verdict_at(line)) return true;
  if (on_it_.marks[line] == Mark::none) return !verdict_at(line);
  return !first_only_ && lines_[line]->critical && on_it_.marks[line] == Mark::shown_when_asked &&
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
  const bool twice = !first_only_ && on_it_.marks[static_cast<std::size_t>(line_)] == Mark::shown_when_asked;
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

void SheetView::scroll_by_finger() {
  QScroller::grabGesture(viewport(), QScroller::TouchGesture);
  QScroller* scroller = QScroller::scroller(viewport());
  QScrollerProperties as = scroller->scrollerProperties();
  // Past its ends the viewport itself would be moved, and the heads of the columns with it.
  as.setScrollMetric(QScrollerProperties::VerticalOvershootPolicy, QScrollerProperties::OvershootAlwaysOff);
  as.setScrollMetric(QScrollerProperties::HorizontalOvershootPolicy, QScrollerProperties::OvershootAlwaysOff);
  scroller->setScrollerProperties(as);
  connect(scroller, &QScroller::stateChanged, this, [this](QScroller::State now) {
    if (now == QScroller::Dragging || now == QScroller::Scrolling) {
      scrolls_ = true;
      pressed_.reset();
    }
    // A finger that stops it has not been pressed here yet, and is not to mark.
    if (now == QScroller::Inactive) QTimer::singleShot(0, this, [this] { scrolls_ = false; });
  });
}

/// A finger's own events, not the mouse's that are made of them: the scroller keeps every second of two quick
/// taps from those.
bool SheetView::viewportEvent(QEvent* event) {
  switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
      take_touch(*static_cast<QTouchEvent*>(event));
      event->accept();
      return true;
    case QEvent::TouchCancel:
      pressed_.reset();
      return true;
    default:
      return QAbstractScrollArea::viewportEvent(event);
  }
}

void SheetView::take_touch(const QTouchEvent& touch) {
  if (touch.pointCount() != 1) return pressed_.reset();
  const QPoint at = touch.points().front().position().toPoint();
  if (touch.type() == QEvent::TouchBegin) press_at(at);
  if (touch.type() == QEvent::TouchUpdate) move_to(at);
  if (touch.type() == QEvent::TouchEnd) let_go_at(at);
}

void SheetView::press_at(const QPoint& at) {
  pressed_.reset();
  if (!scrolls_) pressed_ = Press{at, verticalScrollBar()->value()};
}

void SheetView::move_to(const QPoint& at) {
  if (pressed_ && (at - pressed_->at).manhattanLength() >= QApplication::startDragDistance())
    pressed_.reset();
}

void SheetView::let_go_at(const QPoint& at) {
  move_to(at);
  const auto pressed = std::exchange(pressed_, std::nullopt);
  if (pressed && pressed->scrolled == verticalScrollBar()->value()) tap(pressed->at);
}

void SheetView::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) press_at(event->position().toPoint());
}

/// The second of two quick clicks: a bounce must not take back what was just marked, but the second mark is
/// gone through by one after the other.
void SheetView::mouseDoubleClickEvent(QMouseEvent* event) {
  const QPoint at = event->position().toPoint();
  const bool on_second =
      std::ranges::any_of(rows_, [&](const Row& row) { return again_box(row).contains(at); });
  if (on_second) mousePressEvent(event);
}

void SheetView::mouseMoveEvent(QMouseEvent* event) { move_to(event->position().toPoint()); }
void SheetView::mouseReleaseEvent(QMouseEvent* event) { let_go_at(event->position().toPoint()); }

void SheetView::tap(const QPoint& at) {
  if (at.y() < heads_) return;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const QRect row = again_box(rows_[i]);
    if (at.y() >= row.top() && at.y() <= row.bottom()) return tap_row(i, at);
  }
}

/// The one after it, as the keys have them in order; after the last none.
static Mark next_mark(Mark mark) {
  switch (mark) {
    case Mark::none:
      return Mark::shown;
    case Mark::shown:
      return Mark::shown_when_asked;
    case Mark::shown_when_asked:
      return Mark::not_shown;
    case Mark::not_shown:
      return Mark::none;
  }
  return Mark::none;
}

void SheetView::tap_row(std::size_t line, const QPoint& at) {
  // Where it is, before the line comes into sight as a whole.
  const bool on_field = measure_at(line) && field_box(line, false).united(field_box(line, true)).contains(at);
  const bool on_second =
      !first_only_ && on_it_.marks[line] == Mark::shown_when_asked && again_box(rows_[line]).contains(at);
  Mark on = Mark::none;
  for (Mark mark : {Mark::shown, Mark::shown_when_asked, Mark::not_shown})
    if (mark_box(rows_[line], mark).contains(at)) on = mark;
  go_to(static_cast<int>(line));
  if (on_field) return go_to_field();
  in_again_ = on_second;
  if (on_second) return set_mark(next_mark(on_it_.again[line]));
  if (on != Mark::none) set_mark(on_it_.marks[line] == on ? Mark::none : on);
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
  if (!first_only_ && on_it_.marks[at] == Mark::shown_when_asked)
    said << tr("the second time: %1").arg(mark_words(on_it_.again[at]));
  setAccessibleDescription(said.join(", "));
  QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&changed);
}

}  // namespace wm::app
