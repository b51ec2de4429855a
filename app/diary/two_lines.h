#pragma once
// Draws a list's item on two lines: its words with a short one at the right, and quiet ones below.
#include <QStyledItemDelegate>

namespace wm::app {

class TwoLines : public QStyledItemDelegate {
  Q_OBJECT
 public:
  enum Role { below_role = Qt::UserRole, right_role };
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace wm::app
