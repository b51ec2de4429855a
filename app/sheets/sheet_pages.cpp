#include "app/sheets/sheet_pages.h"

#include <QPainter>
#include <cmath>

namespace wm::app {
namespace {

constexpr double sheet_margin = 30 * paper_unit;
constexpr int between_pages = 10, narrowest = 300;
// As many dots as there are paper units to the inch, so that what is drawn is scaled by this widget alone.
constexpr int dots = 720;

}  // namespace

SheetPages::SheetPages(QWidget* parent) : QWidget(parent) {
  setObjectName("sheet_pages");
  setMinimumWidth(narrowest);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("The blank sheet as it is printed"));
}

void SheetPages::show_sheet(Session& session, const Sheet& sheet) {
  blank_ = blank_sheet(session, sheet, QStringLiteral("\u2013"), paper_size());
  QStringList lines;
  for (const SheetLine* line : lines_of(sheet)) lines << QString::fromStdString(line->text);
  setAccessibleDescription(lines.join("; "));
  updateGeometry();
  setMinimumHeight(heightForWidth(std::max(width(), narrowest)));
  update();
}

void SheetPages::show_none() {
  blank_.reset();
  setAccessibleDescription({});
  setMinimumHeight(0);
  updateGeometry();
  update();
}

QSizeF SheetPages::page() const {
  return printable(blank_->text) + QSizeF(2 * sheet_margin, 2 * sheet_margin);
}

int SheetPages::heightForWidth(int width) const {
  if (!blank_) return 0;
  return static_cast<int>(
      std::ceil(blank_->laid.pages * (width * page().height() / page().width() + between_pages)));
}

QSize SheetPages::sizeHint() const { return {narrowest, heightForWidth(narrowest)}; }

void SheetPages::paintEvent(QPaintEvent*) {
  if (!blank_) return;
  const double scale = width() / page().width(), step = page().height() + between_pages / scale;
  QPainter painter(this);
  painter.scale(scale, scale);
  for (int i = 0; i < blank_->laid.pages; ++i)
    painter.fillRect(QRectF(QPointF(0, i * step), page()), Qt::white);
  painter.translate(sheet_margin, sheet_margin);
  draw_paper(painter, dots, blank_->text, blank_->laid.pages, blank_->laid.draw, [&] {
    painter.translate(0, step);
    return true;
  });
}

}  // namespace wm::app
