#pragma once
// A plan as a drawing: the board's section on the bed, with every pass at its height.
#include <QColor>
#include <QFont>
#include <QWidget>
#include <vector>

#include "core/passes/joint.h"
#include "core/passes/plane.h"

namespace wm::app {

/// Heights in inches above the bed, or above the jointer's tables.
struct PlanPicture {
  struct Cut {
    double top = 0, bottom = 0;
    bool takes = false;  // it surely cuts; else it only looks for the high spot, at `bottom`
    QString setting;     // empty: by what is measured
  };
  double rough = 0, final = 0, hollow = 0;
  QString rough_words, final_words;
  std::vector<Cut> cuts;    // in the order of the plan
  bool from_below = false;  // a jointer cuts the underside

  friend bool operator==(const PlanPicture&, const PlanPicture&) = default;
};
inline bool operator==(const PlanPicture::Cut& a, const PlanPicture::Cut& b) {
  return a.top == b.top && a.bottom == b.bottom && a.takes == b.takes && a.setting == b.setting;
}

/// What comes after the first cut is drawn as even as it comes, without sizes: those go by what is measured.
PlanPicture picture_of(const PassPlan& plan, const Stock& stock);
PlanPicture picture_of(const PassesLeft& left, const Stock& stock, const Inches& measured);
PlanPicture picture_of(const JointPlan& plan, const BoardToJoint& board);

struct PlanInk {
  QColor paper, kept, text, quiet, cut, other_cut;
};
/// The palette in use, and black on white, where cuts are told apart by hatching as well.
PlanInk screen_ink();
PlanInk paper_ink();

/// `line`: how thick a thin line is, in what the painter counts in.
void draw_plan(QPainter& painter, const QRectF& area, const PlanPicture& picture, const PlanInk& ink,
               const QFont& font, double line);

class PlanDrawing : public QWidget {
  Q_OBJECT
 public:
  explicit PlanDrawing(QWidget* parent = nullptr);
  void show_picture(std::optional<PlanPicture> picture);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::optional<PlanPicture> picture_;
};

}  // namespace wm::app
