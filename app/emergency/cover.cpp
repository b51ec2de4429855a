#include "app/emergency/cover.h"

#include <QApplication>
#include <QKeyEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/theme/theme.h"

namespace wm::app {

EmergencyCover::EmergencyCover(QWidget& over, Call call)
    : QWidget(&over),
      over_(over),
      call_(std::move(call)),
      steps_(new CallSteps(CallSteps::Seen::cover)),
      button_(new KeyButton(tr("Somebody is hurt"), emergency_key)) {
  setObjectName("emergency_cover");
  setFocusPolicy(Qt::StrongFocus);
  setAutoFillBackground(true);
  button_->setObjectName("emergency");
  button_->setFocusPolicy(Qt::NoFocus);
  auto* inside = new QWidget;
  auto* words = new QVBoxLayout(inside);
  words->setContentsMargins(48, 36, 48, 24);
  words->addWidget(steps_);
  words->addStretch(1);
  auto* scroll = new QScrollArea;
  scroll->setWidget(inside);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* back = new KeyButton(tr("Back to where you were"), Qt::Key_Escape);
  back->setObjectName("emergency_back");
  back->setFocusPolicy(Qt::NoFocus);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 24);
  column->addWidget(scroll, 1);
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(48, 0, 48, 0);
  foot->addWidget(back);
  foot->addStretch(1);
  column->addLayout(foot);
  hide();
  over.installEventFilter(this);
  connect(button_, &KeyButton::clicked, this, &EmergencyCover::come);
  connect(back, &KeyButton::clicked, this, &EmergencyCover::leave);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { keep_cursor(now); });
}

void EmergencyCover::come() {
  if (isVisible()) return;  // pressed twice is meant once
  steps_->show_call(call_());
  before_ = over_.focusWidget();
  setGeometry(over_.rect());
  raise();
  show();
  setFocus();
}

void EmergencyCover::leave() {
  hide();
  QWidget* const to = before_ && before_->isVisible() ? before_.data() : nullptr;
  (to ? to : &over_)->setFocus();
}

/// What shows itself behind takes the cursor along: it gets it when this is put away.
void EmergencyCover::keep_cursor(QWidget* now) {
  if (!isVisible() || !now || now == this || isAncestorOf(now) || now->window() != over_.window()) return;
  before_ = now;
  setFocus();
}

/// The keys of buttons that lie behind are none now.
bool EmergencyCover::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    event->accept();
    return true;
  }
  return QWidget::event(event);
}

void EmergencyCover::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) leave();
}

bool EmergencyCover::eventFilter(QObject* watched, QEvent* event) {
  if (watched == &over_ && event->type() == QEvent::Resize) setGeometry(over_.rect());
  return false;
}

}  // namespace wm::app
