#pragma once
// Buttons whose key acts at once: Qt's own waits a tenth of a second to show the button going down.
#include <QAbstractButton>
#include <QShortcutEvent>

namespace wm::app {

/// `event` where it is the button's own key: clicks and says so.
inline bool click_at_once(QAbstractButton& button, QEvent* event) {
  if (event->type() != QEvent::Shortcut) return false;
  if (!static_cast<QShortcutEvent*>(event)->isAmbiguous() && button.isEnabled()) button.click();
  return true;
}

}  // namespace wm::app
