#include "app/frame/page_link.h"

#include <QKeySequence>
#include <QPainter>

#include "app/theme/theme.h"

namespace wm::app {

PageLink::PageLink(const QString& title, const QKeySequence& key, QWidget* parent) : QAbstractButton(parent) {
  setText(title);
  setShortcut(key);
  setCheckable(true);
  setAutoExclusive(true);
  setFocusPolicy(Qt::TabFocus);
  setAccessibleName(title);
  setAccessibleDescription(key.toString(QKeySequence::NativeText));
  setCursor(Qt::PointingHandCursor);
}

void PageLink::paintEvent(QPaintEvent*) {
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  if (underMouse()) painter.fillRect(rect(), p.chosen);
  const QRect inside = rect().adjusted(18, 0, -16, 0);
  painter.setFont(type(TypeSize::body, isChecked()));
  painter.setPen(isChecked() ? p.full : p.text);
  QRect words;
  painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, text(), &words);
  if (isChecked()) painter.fillRect(QRect(words.left(), words.bottom() + 2, words.width(), 2), p.full);
  painter.setFont(type(TypeSize::small));
  painter.setPen(p.quiet);
  painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, shortcut().toString(QKeySequence::NativeText));
  if (hasFocus()) {
    painter.setPen(QPen(p.full, 2));
    painter.drawRect(rect().adjusted(5, 1, -5, -1));
  }
}

}  // namespace wm::app
