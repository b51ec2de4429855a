#pragma once
// One line of the list of pages: its title, and its key in quiet type.
#include <QAbstractButton>

#include "app/widgets/at_once.h"

namespace wm::app {

class PageLink : public QAbstractButton {
  Q_OBJECT
 public:
  PageLink(const QString& title, const QKeySequence& key, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {132, 32}; }

 protected:
  bool event(QEvent* event) override { return click_at_once(*this, event) || QAbstractButton::event(event); }
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wm::app
