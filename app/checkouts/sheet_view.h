#pragma once
// A run sheet ruled like paper: numbered lines bracketed by section, and a column of marks.
#include <QAbstractScrollArea>
#include <optional>
#include <vector>

#include "app/checkouts/on_sheet.h"
#include "core/sheet/typed.h"

class QLineEdit;

namespace wm::app {

/// Up and Down move, Right and Left go to the second mark and back; 1 shown, 2 shown when asked, 3 not shown,
/// 0 none; M goes to the measure; Enter goes to the next line that is open, and into its measure where
/// that is missing; Ctrl+Z takes the last mark back. A tap or a click marks when it is let go, where it has
/// stayed; the second mark goes through all its values. A finger that moves scrolls, and marks nothing.
class SheetView : public QAbstractScrollArea {
  Q_OBJECT
 public:
  explicit SheetView(QWidget* parent = nullptr);
  /// `sheet` must live as long as it is shown; null shows nothing.
  void show_sheet(const Sheet* sheet, OnSheet on_it);
  /// What was marked elsewhere meanwhile; the cursor stays.
  void take(OnSheet on_it);
  /// The line, from 1 on, in whose field somebody types just now; 0: in none.
  int typing() const;
  /// A signed sheet is only read.
  void set_read_only(bool read_only);
  /// Only first showings are marked: no second time, and nothing is measured.
  void set_first_only(bool first_only);
  const OnSheet& on_sheet() const { return on_it_; }
  /// What was typed, understood; the first that is none is refused with its line.
  Expected<std::vector<LineMeasured>> measured() const;
  /// What cannot be understood counts as not measured.
  SheetResult result() const;
  int line() const { return line_; }
  /// Where a mark of a line is put, in the viewport; `none`: the one after asking.
  QRect place_of(std::size_t line, Mark mark) const;
  void go_to(int line);

 signals:
  void marked();
  /// What stands in a line's fields is finished.
  void typed();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void scrollContentsBy(int across, int down) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row {
    int top = 0, height = 0;
    int words = 0, says = 0, measure = 0;  // how high each is
  };
  /// Where columns begin; `right` is the last one's end.
  struct Columns {
    int number, text, marks, again, right;
  };

  void scroll_by_finger();
  void take_touch(const QTouchEvent& touch);
  void press_at(const QPoint& at);
  void move_to(const QPoint& at);
  void let_go_at(const QPoint& at);
  void tap(const QPoint& at);
  void tap_row(std::size_t line, const QPoint& at);

  void lay_out();
  /// Scrolls as little as shows all of the current line.
  void keep_in_sight();
  Columns columns() const;
  QRect mark_box(const Row& row, Mark mark) const;
  QRect again_box(const Row& row) const;
  /// Of the current line's fields: the second is the instrument's.
  QRect field_box(std::size_t line, bool instrument) const;
  int next_open() const;
  bool open(std::size_t line) const;
  void set_mark(Mark mark);
  void undo();
  bool move(int key);
  void tell_screen_reader();

  void make_fields();
  const Measure* measure_at(std::size_t line) const;
  std::optional<Expected<LineMeasured>> understood_at(std::size_t line) const;
  std::optional<Verdict> verdict_at(std::size_t line) const;
  QString said_of_measure(std::size_t line) const;
  void place_fields();
  void take_typed();
  void go_to_field();
  void go_on();

  void paint_heads(QPainter& painter) const;
  void paint_row(QPainter& painter, std::size_t line) const;
  void paint_words(QPainter& painter, std::size_t line, const QRect& box) const;
  void paint_measure(QPainter& painter, std::size_t line) const;
  void paint_marks(QPainter& painter, std::size_t line) const;
  void paint_again(QPainter& painter, std::size_t line) const;
  void paint_bracket(QPainter& painter, std::size_t first, std::size_t count, const QString& name) const;

  const Sheet* sheet_ = nullptr;
  std::vector<const SheetLine*> lines_;
  OnSheet on_it_;
  QLineEdit *read_ = nullptr, *marks_apart_ = nullptr;
  std::vector<Row> rows_;
  /// The marks as they were before each change, with the line it was on.
  struct Before {
    std::vector<Mark> marks, again;
    int line;
  };
  std::vector<Before> before_;
  int heads_ = 0;  // height of the column heads
  int line_ = 0;
  bool in_again_ = false, read_only_ = false, first_only_ = false;
  /// Where a button or a finger went down, and how far the sheet was scrolled then; none once it has moved.
  struct Press {
    QPoint at;
    int scrolled;
  };
  std::optional<Press> pressed_;
  bool scrolls_ = false;  // by a finger; what comes down then only stops it
};

}  // namespace wm::app
