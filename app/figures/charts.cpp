#include "app/figures/charts.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QCoreApplication>
#include <QScatterSeries>
#include <QStackedBarSeries>
#include <QValueAxis>
#include <algorithm>

#include "app/figures/figure_words.h"
#include "app/theme/theme.h"

namespace wm::app {
namespace {

struct Charts {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Charts)
};

QBrush hatched() { return {palette().half, Qt::BDiagPattern}; }

void style(QAbstractAxis& axis, const QString& title) {
  const Palette& colours = palette();
  axis.setTitleText(title);
  axis.setTitleFont(type(TypeSize::small));
  axis.setTitleBrush(colours.quiet);
  axis.setLabelsFont(type(TypeSize::small));
  axis.setLabelsBrush(colours.text);
  axis.setLinePen(QPen(colours.quiet));
  axis.setGridLinePen(QPen(colours.line));
}

QChart* new_chart(const QString& title) {
  const Palette& colours = palette();
  auto* chart = new QChart;
  chart->setTitle(title);
  chart->setTitleFont(type(TypeSize::body, true));
  chart->setTitleBrush(colours.text);
  chart->setBackgroundBrush(colours.paper);
  chart->setBackgroundRoundness(0);
  chart->setMargins(QMargins(4, 4, 4, 4));
  chart->legend()->setAlignment(Qt::AlignBottom);
  chart->legend()->setFont(type(TypeSize::small));
  chart->legend()->setLabelColor(colours.text);
  return chart;
}

/// Wheel and keys go to the page, not into the picture.
class Picture : public QChartView {
 public:
  Picture(QChart* chart, const QString& words) : QChartView(chart) {
    setRenderHint(QPainter::Antialiasing);
    setFixedHeight(250);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(words);
    setBackgroundBrush(wm::app::palette().paper);
  }

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

void add_axes(QChart& chart, QAbstractSeries* series, QAbstractAxis* across, QAbstractAxis* up) {
  if (chart.axes().isEmpty()) {
    chart.addAxis(across, Qt::AlignBottom);
    chart.addAxis(up, Qt::AlignLeft);
  }
  series->attachAxis(across);
  series->attachAxis(up);
}

QScatterSeries* dots(const QString& name, QScatterSeries::MarkerShape shape, qreal size) {
  auto* series = new QScatterSeries;
  series->setName(name);
  series->setMarkerShape(shape);
  series->setMarkerSize(size);
  series->setBorderColor(palette().full);
  return series;
}

bool is_doubted(const teach::BankFigures& bank, const teach::QuestionFigures& figures) {
  return std::ranges::any_of(bank.look_first, [&](const teach::LookAt& look) {
    return look.figures == figures && look.reasons.front().doubt < teach::Doubt::tells_nothing;
  });
}

}  // namespace

QWidget* spread_chart(const teach::BankFigures& bank) {
  if (bank.spread.empty()) return nullptr;
  const std::size_t total = bank.spread.size() - 1;
  const std::size_t mark = static_cast<std::size_t>(bank.revisions.back().pass_percent);
  auto* below = new QBarSet(Charts::tr("below the pass mark"));
  auto* from = new QBarSet(Charts::tr("at the pass mark or above"));
  below->setBrush(hatched());
  below->setPen(QPen(palette().half));
  from->setBrush(palette().full);
  from->setPen(QPen(palette().full));
  QStringList names;
  const auto first = static_cast<std::size_t>(
      std::ranges::find_if(bank.spread, [](std::size_t n) { return n > 0; }) - bank.spread.begin());
  for (std::size_t right = first; right <= total; ++right) {
    const bool passes = right * 100 >= mark * total;
    names << QString::number(right);
    below->append(passes ? 0 : static_cast<double>(bank.spread[right]));
    from->append(passes ? static_cast<double>(bank.spread[right]) : 0);
  }
  auto* series = new QStackedBarSeries;
  series->append(below);
  series->append(from);
  series->setBarWidth(0.8);
  QChart* chart = new_chart(Charts::tr("How many had how many right"));
  chart->addSeries(series);
  auto* across = new QBarCategoryAxis;
  across->append(names);
  auto* up = new QValueAxis;
  up->setLabelFormat("%d");
  up->setRange(0, static_cast<double>(std::ranges::max(bank.spread)));
  up->applyNiceNumbers();
  style(*across, Charts::tr("questions right, of %1").arg(total));
  style(*up, Charts::tr("attempts"));
  add_axes(*chart, series, across, up);
  return new Picture(chart, chart->title());
}

QWidget* question_chart(const teach::BankFigures& bank) {
  auto* others = dots(Charts::tr("questions"), QScatterSeries::MarkerShapeCircle, 8);
  others->setColor(palette().half);
  auto* doubted = dots(Charts::tr("to look at first"), QScatterSeries::MarkerShapeRectangle, 12);
  doubted->setColor(palette().full);
  double lowest = 0;
  for (const teach::QuestionFigures& each : bank.questions) {
    if (!each.difficulty || !each.with_rest) continue;
    (is_doubted(bank, each) ? doubted : others)->append(*each.difficulty * 100, *each.with_rest);
    lowest = std::min(lowest, *each.with_rest);
  }
  if (others->count() + doubted->count() == 0) {
    delete others;
    delete doubted;
    return nullptr;
  }
  QChart* chart = new_chart(Charts::tr("How hard each question is, and what it tells"));
  chart->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
  auto* across = new QValueAxis;
  across->setRange(0, 100);
  across->setTickCount(6);
  across->setLabelFormat("%d");
  auto* up = new QValueAxis;
  up->setRange(lowest < -0.5 ? -1 : lowest < 0 ? -0.5 : 0, 1);
  up->setTickCount(lowest < -0.5 ? 5 : lowest < 0 ? 4 : 3);
  up->setLabelFormat("%.1f");
  style(*across, Charts::tr("had it right, in %"));
  style(*up, Charts::tr("what it tells"));
  for (QScatterSeries* series : {others, doubted}) {
    chart->addSeries(series);
    add_axes(*chart, series, across, up);
  }
  return new Picture(chart, chart->title());
}

}  // namespace wm::app
