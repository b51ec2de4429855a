#include "app/quiz/station_type.h"

#include <QStyleOptionButton>
#include <QStylePainter>

namespace wm::app {

StationButton::StationButton(const QString& words, const QKeySequence& key, bool primary, QWidget* parent)
    : QPushButton(parent) {
  if (primary) setProperty("role", "primary");
  setShortcut(key);
  say(words);
}

void StationButton::say(const QString& words) {
  const QKeySequence key = shortcut();  // setText() would take it away
  setText(words);
  setShortcut(key);
  setAccessibleName(words);
  setAccessibleDescription(key_words());
  updateGeometry();
  update();
}

void StationButton::set_size(int pixels) {
  pixels_ = pixels;
  updateGeometry();
  update();
}

QSize StationButton::sizeHint() const {
  const QFontMetrics words(sized(pixels_, true)), key(key_font());
  const int width = std::max(words.horizontalAdvance(text()), key.horizontalAdvance(key_words()));
  return {width + 36, words.height() + key.height() + 18};
}

void StationButton::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  painter.drawControl(QStyle::CE_PushButton, option);
  const Palette& p = wm::app::palette();
  const bool inverse = property("role") == "primary" && isEnabled();
  const QRect inside = rect().adjusted(8, 7, -8, -7);
  painter.setPen(inverse ? p.paper : isEnabled() ? p.text : p.quiet);
  painter.setFont(sized(pixels_, property("role") == "primary"));
  painter.drawText(inside, Qt::AlignHCenter | (key_words().isEmpty() ? Qt::AlignVCenter : Qt::AlignTop),
                   text());
  painter.setPen(inverse ? p.paper : p.quiet);
  painter.setFont(key_font());
  painter.drawText(inside, Qt::AlignHCenter | Qt::AlignBottom, key_words());
}

}  // namespace wm::app
