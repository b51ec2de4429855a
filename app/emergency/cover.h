#pragma once
// The number and the steps over a whole window that has no page for them: one key brings them, Escape leads
// back to where the cursor was. What goes on behind goes on; no key reaches it meanwhile.
#include <QPointer>
#include <functional>

#include "app/emergency/call_steps.h"
#include "app/widgets/key_button.h"

namespace wm::app {

/// The same key from anywhere.
inline const QKeySequence emergency_key(Qt::CTRL | Qt::SHIFT | Qt::Key_H);

class EmergencyCover : public QWidget {
  Q_OBJECT
 public:
  using Call = std::function<db::EmergencyCall()>;
  EmergencyCover(QWidget& over, Call call);
  /// What brings it: for the foot of the window. It takes no cursor, since it has the key.
  KeyButton* button() { return button_; }

 protected:
  bool event(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool focusNextPrevChild(bool) override { return true; }

 private:
  void come();
  void leave();
  void keep_cursor(QWidget* now);

  QWidget& over_;
  Call call_;
  CallSteps* steps_;
  KeyButton* button_;
  QPointer<QWidget> before_;  // had the cursor
};

}  // namespace wm::app
