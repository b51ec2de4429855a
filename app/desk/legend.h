#pragma once
// What the ladders and strips mean, in one quiet line below them.
#include <QWidget>

namespace wm::app {

class Legend : public QWidget {
  Q_OBJECT
 public:
  explicit Legend(QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wm::app
