#pragma once
// A button whose words may take two lines, with its key below them.
#include <QAbstractButton>
#include <QKeySequence>

#include "app/widgets/at_once.h"

namespace wm::app {

class WrappedButton : public QAbstractButton {
  Q_OBJECT
 public:
  WrappedButton(const QString& text, const QKeySequence& key, QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  bool event(QEvent* event) override { return click_at_once(*this, event) || QAbstractButton::event(event); }
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wm::app
