#pragma once
// Draws a row of the diary: time, machine and unit, people, and at the right the reason; a heading with its
// rule.
#include <QStyledItemDelegate>

#include "app/diary/diary_rows.h"

namespace wm::app {

class DiaryDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  DiaryDelegate(const DiaryRows& rows, QObject* parent);
  /// Measures the columns anew; call after the rows or the type have changed.
  void measure();

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  int columns_end() const { return time_ + machine_ + people_; }
  /// Whether the reason needs a line of its own in so much room.
  bool two_lines(const DiaryRow& row, int width) const;
  void paint_row(QPainter& painter, const QRect& box, const DiaryRow& row, bool chosen) const;

  const DiaryRows& rows_;
  int time_ = 0, machine_ = 0, people_ = 0;  // widths, gaps included
};

}  // namespace wm::app
