#include "app/widgets/wrapped_button.h"

#include <QPainter>

#include "app/theme/theme.h"

namespace wm::app {

WrappedButton::WrappedButton(const QString& text, const QKeySequence& key, QWidget* parent)
    : QAbstractButton(parent) {
  setText(text);
  setShortcut(key);
  setAccessibleName(text);
  setAccessibleDescription(key.toString(QKeySequence::NativeText));
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
}

QSize WrappedButton::sizeHint() const { return {130, 72}; }

void WrappedButton::paintEvent(QPaintEvent*) {
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(hasFocus() ? p.full : p.text, hasFocus() ? 2.5 : 1.4));
  painter.setBrush(underMouse() || isDown() ? p.chosen : p.paper);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 6, 6);
  painter.setPen(p.text);
  painter.setFont(type(TypeSize::small, true));
  painter.drawText(rect().adjusted(8, 8, -8, -24), Qt::AlignCenter | Qt::TextWordWrap, text());
  painter.setPen(p.quiet);
  painter.setFont(type(TypeSize::small));
  painter.drawText(rect().adjusted(8, 0, -8, -8), Qt::AlignHCenter | Qt::AlignBottom,
                   shortcut().toString(QKeySequence::NativeText));
}

}  // namespace wm::app
