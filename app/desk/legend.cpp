#include "app/desk/legend.h"

#include "app/theme/theme.h"
#include "app/widgets/ladder.h"
#include "app/widgets/strip.h"
#include "app/words/words.h"

namespace wm::app {

Legend::Legend(QWidget* parent) : QWidget(parent) { setFixedHeight(26); }

void Legend::paintEvent(QPaintEvent*) {
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  painter.setFont(type(TypeSize::small));
  qreal x = 10;
  const auto words = [&](const QString& text) {
    painter.setPen(p.quiet);
    const int width = painter.fontMetrics().horizontalAdvance(text);
    painter.drawText(QRectF(x, 0, width + 2, height()), Qt::AlignVCenter, text);
    x += width + 24;
  };
  for (const Rung rung : {Rung::independent, Rung::supervised, Rung::barred}) {
    draw_ladder(painter, QRectF(x, 5, 15, 17), rung, p.full, p.quiet, p.text);
    x += 22;
    words(standing_words(rung));
  }
  const Scale scale{Instant{0}, Instant{100}, x, 30};
  draw_strip(painter, QRectF(x, 6, 30, 15), scale, {{Instant{0}, Rung::independent}}, Instant{0});
  x += 37;
  words(tr("known to come"));
}

}  // namespace wm::app
