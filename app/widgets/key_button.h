#pragma once
// A button with its key written at its right end, so that the keyboard is learnt by looking.
#include <QKeySequence>
#include <QPushButton>

#include "app/widgets/at_once.h"

namespace wm::app {

class KeyButton : public QPushButton {
  Q_OBJECT
 public:
  /// `primary`: what comes next on this page; at most one is seen at a time.
  KeyButton(const QString& text, const QKeySequence& key, bool primary = false, QWidget* parent = nullptr);
  /// Changes the words and keeps the key.
  void say(const QString& text);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  bool event(QEvent* event) override { return click_at_once(*this, event) || QPushButton::event(event); }
  void paintEvent(QPaintEvent* event) override;

 private:
  QString key_words() const { return shortcut().toString(QKeySequence::NativeText); }
};

}  // namespace wm::app
