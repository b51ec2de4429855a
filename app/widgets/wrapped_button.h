#pragma once
// A button whose words may take two lines, with its key below them.
#include <QAbstractButton>
#include <QKeySequence>

namespace wm::app {

class WrappedButton : public QAbstractButton {
  Q_OBJECT
 public:
  WrappedButton(const QString& text, const QKeySequence& key, QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wm::app
