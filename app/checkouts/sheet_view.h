#pragma once
// A run sheet ruled like paper: numbered lines bracketed by section, and a column of marks.
#include <QAbstractScrollArea>
#include <vector>

#include "core/sheet/mark.h"
#include "core/sheet/sheet.h"

namespace wm::app {

/// Up and Down move, Right and Left go to the second mark and back; 1 shown, 2 shown when asked, 3 not shown,
/// 0 none; Enter goes to the next line that is open; Ctrl+Z takes the last mark back.
class SheetView : public QAbstractScrollArea {
  Q_OBJECT
 public:
  explicit SheetView(QWidget* parent = nullptr);
  /// `sheet` must live as long as it is shown; null shows nothing.
  void show_sheet(const Sheet* sheet, std::vector<Mark> marks, std::vector<Mark> again);
  /// A signed sheet is only read.
  void set_read_only(bool read_only);
  const std::vector<Mark>& marks() const { return marks_; }
  const std::vector<Mark>& again() const { return again_; }
  int line() const { return line_; }
  void go_to(int line);

 signals:
  void marked();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  struct Row {
    int top = 0, height = 0;
  };
  /// Where columns begin; `right` is the last one's end.
  struct Columns {
    int number, text, marks, again, right;
  };

  void lay_out();
  Columns columns() const;
  QRect mark_box(const Row& row, Mark mark) const;
  QRect again_box(const Row& row) const;
  int next_open() const;
  bool open(std::size_t line) const;
  void set_mark(Mark mark);
  void undo();
  bool move(int key);
  void tell_screen_reader();

  void paint_heads(QPainter& painter) const;
  void paint_row(QPainter& painter, std::size_t line) const;
  void paint_words(QPainter& painter, std::size_t line, const QRect& box) const;
  void paint_marks(QPainter& painter, std::size_t line) const;
  void paint_again(QPainter& painter, std::size_t line) const;
  void paint_bracket(QPainter& painter, std::size_t first, std::size_t count, const QString& name) const;

  const Sheet* sheet_ = nullptr;
  std::vector<const SheetLine*> lines_;
  std::vector<Mark> marks_, again_;
  std::vector<Row> rows_;
  /// The marks as they were before each change, with the line it was on.
  struct Before {
    std::vector<Mark> marks, again;
    int line;
  };
  std::vector<Before> before_;
  int heads_ = 0;  // height of the column heads
  int line_ = 0;
  bool in_again_ = false, read_only_ = false;
};

QString mark_words(Mark mark);

}  // namespace wm::app
