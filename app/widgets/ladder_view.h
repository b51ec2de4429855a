#pragma once
// The ladder as a widget, read aloud as its words.
#include <QWidget>

#include "app/theme/theme.h"
#include "app/widgets/ladder.h"
#include "app/words/words.h"

namespace wm::app {

class LadderView : public QWidget {
  Q_OBJECT
 public:
  explicit LadderView(QWidget* parent = nullptr) : QWidget(parent) { setFixedSize(26, 28); }
  void set(Rung rung) {
    rung_ = rung;
    setAccessibleName(standing_words(rung));
    update();
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    const Palette& p = wm::app::palette();
    QPainter painter(this);
    draw_ladder(painter, QRectF(rect()).adjusted(1, 1, -1, -1), rung_, p.full, p.quiet, p.text);
  }

 private:
  Rung rung_ = Rung::barred;
};

}  // namespace wm::app
