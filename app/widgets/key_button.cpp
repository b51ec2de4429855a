#include "app/widgets/key_button.h"

#include <QStyleOptionButton>
#include <QStylePainter>

#include "app/theme/theme.h"

namespace wm::app {

namespace {
constexpr int margin = 10;
}

KeyButton::KeyButton(const QString& text, const QKeySequence& key, bool primary, QWidget* parent)
    : QPushButton(parent) {
  if (primary) setProperty("role", "primary");
  setShortcut(key);
  say(text);
  setMinimumHeight(row_height() - 2);
}

void KeyButton::say(const QString& text) {
  const QKeySequence key = shortcut();  // setText() would take it away
  setText(text);
  setShortcut(key);
  setAccessibleName(text);
  setAccessibleDescription(key_words());
  update();
}

QSize KeyButton::sizeHint() const {
  const int key = QFontMetrics(type(TypeSize::small)).horizontalAdvance(key_words());
  return {QFontMetrics(type(TypeSize::body, true)).horizontalAdvance(text()) + key + 4 * margin,
          row_height() - 2};
}

QSize KeyButton::minimumSizeHint() const { return {80, row_height() - 2}; }

void KeyButton::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  painter.drawControl(QStyle::CE_PushButton, option);

  const Palette& p = wm::app::palette();
  const bool primary = property("role") == "primary";
  const QColor ink = !isEnabled() ? p.quiet : primary ? p.paper : p.text;
  const QRect inside = rect().adjusted(margin, 0, -margin, 0);
  painter.setFont(type(TypeSize::small));
  painter.setPen(primary && isEnabled() ? p.paper : p.quiet);
  painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, key_words());
  const int key = painter.fontMetrics().horizontalAdvance(key_words());
  painter.setFont(type(TypeSize::body, primary));
  painter.setPen(ink);
  const int room = inside.width() - key - (key > 0 ? 6 : 0);
  painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(text(), Qt::ElideRight, room));
}

}  // namespace wm::app
