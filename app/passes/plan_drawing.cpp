// How a plan is drawn.
#include "app/passes/plan_picture.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/theme/theme.h"

namespace wm::app {
namespace {

/// Where things are on the drawing.
struct Frame {
  QRectF board;  // from the bed, at its foot, to the tallest thing drawn
  QRectF labels;
  double per_inch = 1;
  double y(double height) const { return board.bottom() - height * per_inch; }
};

double tallest(const PlanPicture& picture) {
  double top = picture.rough;
  for (const PlanPicture::Cut& cut : picture.cuts) top = std::max({top, cut.top, cut.bottom});
  return top;
}

Frame frame_in(const QRectF& area, const PlanPicture& picture, const QFontMetricsF& type) {
  const double left = type.horizontalAdvance(picture.rough_words) + 2.2 * type.height();
  const double right = type.horizontalAdvance(QStringLiteral("00   0000/000 mm"));
  Frame frame;
  frame.board = area.adjusted(left, type.height(), -right - type.height() * 1.5, -1.4 * type.height());
  frame.labels = QRectF(frame.board.right() + type.height() * 1.5, area.top(), right, area.height());
  frame.per_inch = frame.board.height() / std::max(tallest(picture), 1e-6);
  return frame;
}

/// What stays, with the rings of its end grain, so that it is seen that this is wood from its end.
void draw_kept(QPainter& painter, const Frame& frame, const QRectF& kept, const PlanInk& ink, double line) {
  painter.fillRect(kept, ink.kept);
  painter.save();
  painter.setClipRect(kept);
  painter.setPen(QPen(ink.quiet, line * 0.6));
  painter.setBrush(Qt::NoBrush);
  const QPointF heart(frame.board.center().x(), frame.board.bottom() + frame.board.width() * 0.35);
  for (int ring = 4; ring <= 16; ++ring) {
    const double radius = frame.board.width() * 0.075 * ring;
    painter.drawEllipse(heart, radius, radius);
  }
  painter.restore();
}

void draw_cuts(QPainter& painter, const Frame& frame, const PlanPicture& picture, const PlanInk& ink,
               double line) {
  const auto edge_at = [&](double height) {
    painter.drawLine(QPointF(frame.board.left(), frame.y(height)),
                     QPointF(frame.board.right(), frame.y(height)));
  };
  bool odd = false;
  for (const PlanPicture::Cut& cut : picture.cuts) {
    if (!cut.takes) continue;
    QColor fill = odd ? ink.cut : ink.other_cut;
    // What goes by a measure is only hinted at.
    if (cut.setting.isEmpty()) fill.setAlphaF(odd ? 0.3f : 0.45f);
    painter.fillRect(QRectF(QPointF(frame.board.left(), frame.y(cut.top)),
                            QPointF(frame.board.right(), frame.y(cut.bottom))),
                     fill);
    painter.setPen(QPen(cut.setting.isEmpty() ? ink.quiet : ink.text, line));
    edge_at(picture.from_below ? cut.top : cut.bottom);
    odd = !odd;
  }
  // Over the bands: nobody knows where the high spot is.
  QPen dashes(ink.text, line);
  dashes.setDashPattern({6, 4});
  painter.setPen(dashes);
  for (const PlanPicture::Cut& cut : picture.cuts)
    if (!cut.takes) edge_at(cut.bottom);
}

/// The underside of a board that rests on its two ends.
void draw_hollow(QPainter& painter, const Frame& frame, const PlanPicture& picture, const PlanInk& ink,
                 double line) {
  QPainterPath arc(QPointF(frame.board.left(), frame.y(0)));
  arc.quadTo(QPointF(frame.board.center().x(), frame.y(2 * picture.hollow)),
             QPointF(frame.board.right(), frame.y(0)));
  painter.setPen(QPen(ink.text, line * 1.5));
  painter.setBrush(ink.paper);
  painter.drawPath(arc);
}

/// `behind`: what the words stand on, so that no ring goes through them.
void draw_size(QPainter& painter, double x, double from, double to, const QString& words, const PlanInk& ink,
               const QColor& behind, double line) {
  const double tick = QFontMetricsF(painter.font()).height() * 0.25;
  painter.setPen(QPen(ink.text, line));
  painter.drawLine(QPointF(x, from), QPointF(x, to));
  for (const double end : {from, to}) painter.drawLine(QPointF(x - tick, end), QPointF(x + tick, end));
  const double room = QFontMetricsF(painter.font()).height();
  painter.save();
  painter.translate(x - tick, (from + to) / 2);
  painter.rotate(-90);
  const QRectF place(-200 * line, -room, 400 * line, room);
  constexpr int how = Qt::AlignHCenter | Qt::AlignBottom;
  painter.fillRect(painter.boundingRect(place, how, words).adjusted(-2 * line, 0, 2 * line, 0), behind);
  painter.drawText(place, how, words);
  painter.restore();
}

/// As near to where they belong as they can stand without touching, from the top down.
std::vector<double> spread(std::vector<double> wanted, double apart, double top, double bottom) {
  for (std::size_t i = 0; i < wanted.size(); ++i)
    wanted[i] = std::max(wanted[i], i == 0 ? top : wanted[i - 1] + apart);
  double limit = bottom;
  for (std::size_t i = wanted.size(); i-- > 0; limit = wanted[i] - apart)
    wanted[i] = std::min(wanted[i], limit);
  return wanted;
}

struct Label {
  double height;
  QString words;
};

/// One a pass from the top down; where there is no room for so many, those that only look for the high spot
/// share one.
std::vector<Label> labels_of(const PlanPicture& picture, double room_for) {
  const bool share = static_cast<double>(picture.cuts.size()) > room_for;
  std::vector<Label> out;
  for (std::size_t i = 0; i < picture.cuts.size(); ++i) {
    const PlanPicture::Cut& cut = picture.cuts[i];
    std::size_t last = i;
    while (share && !cut.takes && last + 1 < picture.cuts.size() && !picture.cuts[last + 1].takes) ++last;
    const QString number =
        last > i ? QStringLiteral("%1–%2").arg(i + 1).arg(last + 1) : QString::number(i + 1);
    const double height = picture.from_below ? cut.top : (cut.bottom + picture.cuts[last].bottom) / 2;
    const bool alone = last == i && !cut.setting.isEmpty();
    out.push_back({height, alone ? number + QStringLiteral("   ") + cut.setting : number});
    i = last;
  }
  std::ranges::stable_sort(out, std::greater(), &Label::height);
  return out;
}

void draw_labels(QPainter& painter, const Frame& frame, const PlanPicture& picture, const PlanInk& ink,
                 double line) {
  const double apart = QFontMetricsF(painter.font()).height() * 1.05;
  const auto labels = labels_of(picture, frame.labels.height() / apart);
  std::vector<double> wanted;
  for (const Label& label : labels) wanted.push_back(frame.y(label.height));
  const auto at = spread(wanted, apart, frame.labels.top() + apart / 2, frame.labels.bottom() - apart / 2);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    painter.setPen(QPen(ink.quiet, line));
    painter.drawLine(QPointF(frame.board.right(), wanted[i]),
                     QPointF(frame.labels.left() - apart / 4, at[i]));
    painter.setPen(ink.text);
    painter.drawText(QRectF(frame.labels.left(), at[i] - apart / 2, frame.labels.width(), apart),
                     Qt::AlignVCenter | Qt::AlignLeft, labels[i].words);
  }
}

void draw_bed(QPainter& painter, const Frame& frame, const PlanInk& ink, double line) {
  const QRectF bed(frame.board.left() - 8 * line, frame.board.bottom(), frame.board.width() + 16 * line,
                   6 * line);
  painter.fillRect(bed, ink.quiet);
}

}  // namespace

PlanInk screen_ink() {
  const Palette& p = palette();
  return {p.paper, p.chosen, p.text, p.quiet, p.half, p.full};
}

PlanInk paper_ink() {
  return {Qt::white, Qt::white, Qt::black, QColor(90, 90, 90), QColor(190, 190, 190), QColor(225, 225, 225)};
}

void draw_plan(QPainter& painter, const QRectF& area, const PlanPicture& picture, const PlanInk& ink,
               const QFont& font, double line) {
  painter.save();
  painter.setFont(font);
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF type(font, painter.device());
  const Frame frame = frame_in(area, picture, type);
  const double left = frame.board.left(), top = frame.y(picture.rough);
  const QRectF whole(QPointF(left, top), QPointF(frame.board.right(), frame.y(0)));
  draw_kept(painter, frame, whole, ink, line);
  draw_cuts(painter, frame, picture, ink, line);
  if (picture.from_below) draw_hollow(painter, frame, picture, ink, line);
  painter.setPen(QPen(ink.text, line * 1.5));
  painter.setBrush(Qt::NoBrush);
  if (picture.from_below)
    painter.drawPolyline(
        QPolygonF{whole.bottomLeft(), whole.topLeft(), whole.topRight(), whole.bottomRight()});
  else
    painter.drawRect(whole);
  draw_bed(painter, frame, ink, line);
  draw_size(painter, left - 1.4 * type.height(), top, frame.y(0), picture.rough_words, ink, Qt::transparent,
            line);
  if (!picture.final_words.isEmpty())
    draw_size(painter, left + 1.6 * type.height(), frame.y(picture.final), frame.y(0), picture.final_words,
              ink, ink.kept, line);
  draw_labels(painter, frame, picture, ink, line);
  painter.restore();
}

PlanDrawing::PlanDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName("plan_drawing");
  setAccessibleName(tr("The board from its end, with each pass at its height"));
  setMinimumSize(300, 220);
}

void PlanDrawing::show_picture(std::optional<PlanPicture> picture) {
  picture_ = std::move(picture);
  update();
}

void PlanDrawing::paintEvent(QPaintEvent*) {
  if (!picture_) return;
  QPainter painter(this);
  draw_plan(painter, QRectF(rect()).adjusted(4, 4, -4, -4), *picture_, screen_ink(), type(TypeSize::small),
            1);
}

}  // namespace wm::app
