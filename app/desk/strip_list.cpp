#include "app/desk/strip_list.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QToolTip>
#include <cmath>

#include "app/desk/strip_delegate.h"
#include "app/theme/theme.h"
#include "app/words/words.h"

namespace wm::app {

StripList::StripList(Session& session, QWidget* parent)
    : QListView(parent), session_(session), model_(new StripModel(this)) {
  setModel(model_);
  setItemDelegate(new StripDelegate(this));
  setObjectName("strips");
  setAccessibleName(tr("Machines, by tier"));
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFrameShape(QFrame::NoFrame);
  setMouseTracking(true);
}

void StripList::show_person(const PersonId& person) {
  const TargetName kept = person == person_ ? target() : TargetName();
  person_ = person;
  model_->set(strips_of(session_, person));
  fit_rows();
  if (!kept.empty()) choose(kept);
}

void StripList::choose(const TargetName& target) {
  const int row = qMax(0, model_->row_of(target));
  setCurrentIndex(model_->index(row == 0 ? 1 : row));
}

TargetName StripList::target() const {
  const int row = currentIndex().row();
  return row < 0 || row >= model_->rowCount() ? TargetName() : model_->row(row).target;
}

Scale StripList::scale() const {
  const QRectF strip = StripDelegate::columns(QRect(0, 0, viewport()->width(), height_)).strip;
  return {strips().from, strips().to, strip.left(), strip.width()};
}

void StripList::fit_rows() {
  const int rows = qMax(1, model_->rowCount());
  height_ =
      qBound(21, (viewport()->height() - model_->restricted() * restricted_height) / rows, row_height());
  scheduleDelayedItemsLayout();
}

void StripList::resizeEvent(QResizeEvent* event) {
  QListView::resizeEvent(event);
  fit_rows();
}

void StripList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return && event->modifiers() == Qt::NoModifier) return emit entered();
  QListView::keyPressEvent(event);
}

void StripList::currentChanged(const QModelIndex& now, const QModelIndex& before) {
  QListView::currentChanged(now, before);
  if (now.isValid()) emit target_chosen();
}

bool StripList::viewportEvent(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QListView::viewportEvent(event);
  auto* help = static_cast<QHelpEvent*>(event);
  const QModelIndex index = indexAt(help->pos());
  const Scale on = scale();
  const qreal x = help->pos().x();
  if (!index.isValid() || model_->row(index.row()).heading()) return true;
  const Instant t = x < on.left || x > on.left + on.width ? strips().today : on.at(x);
  QToolTip::showText(help->globalPos(), why_at(session_, person_, model_->row(index.row()), t), viewport(),
                     visualRect(index));
  return true;
}

StripHeader::StripHeader(StripList* list, const Zone& zone, QWidget* parent)
    : QWidget(parent), list_(list), zone_(zone) {
  setFixedHeight(26);
}

void StripHeader::paintEvent(QPaintEvent*) {
  const Palette& p = wm::app::palette();
  QPainter painter(this);
  painter.setFont(type(TypeSize::small));
  painter.setPen(p.quiet);
  const Scale on = list_->scale();
  const int shift = list_->viewport()->mapTo(parentWidget(), QPoint(0, 0)).x() - x();
  for (int year = civil(zone_.day(on.from)).year; year <= civil(zone_.day(on.to)).year; ++year) {
    const qreal x = std::round(on.x(zone_.start(day_of({year, 1, 1})))) + shift + 0.5;
    if (x < on.left + shift || x > on.left + on.width + shift - 28) continue;
    painter.drawLine(QPointF(x, 21), QPointF(x, 25));
    painter.drawText(QRectF(x, 2, 60, 18), Qt::AlignLeft | Qt::AlignVCenter, QString::number(year));
  }
  const QRectF through = StripDelegate::columns(QRect(shift, 0, list_->viewport()->width(), 26)).through;
  painter.drawText(QRectF(through.left(), 2, through.width(), 18), Qt::AlignLeft | Qt::AlignVCenter,
                   tr("through"));
}

}  // namespace wm::app
