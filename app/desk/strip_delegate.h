#pragma once
// Draws one row of the list of strips.
#include <QStyledItemDelegate>

#include "app/desk/strip_list.h"

namespace wm::app {

class StripDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  struct Columns {
    QRectF label, ladder, words, strip, through;
  };
  static Columns columns(const QRect& row);

  explicit StripDelegate(StripList* list) : QStyledItemDelegate(list), list_(list) {}
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  void paint_heading(QPainter& painter, const QRect& row, int tier) const;
  void paint_row(QPainter& painter, const QRect& box, const StripRow& row, bool chosen) const;

  StripList* list_;
};

}  // namespace wm::app
