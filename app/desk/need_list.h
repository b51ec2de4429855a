#pragma once
// Requirements as ticked and open boxes, what is missing in heavy type, with the quiet line below each.
#include <QWidget>
#include <vector>

#include "app/words/needs.h"

namespace wm::app {

class NeedList : public QWidget {
  Q_OBJECT
 public:
  explicit NeedList(QWidget* parent = nullptr) : QWidget(parent) {}
  void set(std::vector<NeedLine> lines);
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override { return {300, heightForWidth(300)}; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  int lay_out(int width, class QPainter* painter) const;

  std::vector<NeedLine> lines_;
};

}  // namespace wm::app
