#include "app/diary/day_strip.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "app/theme/theme.h"

namespace wm::app {
namespace {

constexpr int axis = 22, row = 26, edge = 2;
constexpr std::size_t most_bands = 6;

DayBand* find(std::vector<DayBand>& bands, const MachineId& id) {
  const auto found =
      std::find_if(bands.begin(), bands.end(), [&](const DayBand& b) { return b.machine == id; });
  return found == bands.end() ? nullptr : &*found;
}

}  // namespace

std::vector<DayBand> day_bands(Session& session, Day day, const TargetName& target,
                               const std::optional<Slot>& chosen) {
  const std::vector<Unit> all = units(session);
  const Interval whole{session.zone().start(day), session.zone().start(day + 1)};
  std::vector<DayBand> bands;
  const auto band = [&](const MachineId& id) -> DayBand& {
    if (DayBand* there = find(bands, id)) return *there;
    bands.push_back({id, unit_label(all, id), {}, {}, false});
    return bands.back();
  };
  for (const Unit& unit : all)
    if (!target.empty() && unit.machine_class == class_of(target)) band(unit.id);
  for (const BookingLine& line : bookings(session, whole))
    band(line.booking.machine).booked.push_back({line.booking.from, line.booking.to});
  if (chosen && overlap(chosen->when, whole)) band(chosen->unit).chosen.push_back(chosen->when);
  const Instant noon = std::max(session.present(), whole.from + std::int64_t{12} * 3600);
  for (DayBand& each : bands)
    each.out_of_service =
        !session.decider(std::nullopt).may_start("", each.machine, "", noon, false, {}, {}).lockouts.empty();
  return bands;
}

DayStrip::DayStrip(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void DayStrip::show_day(const Zone& zone, Day day, std::vector<DayBand> bands) {
  zone_ = zone;
  day_ = day;
  bands_ = std::move(bands);
  left_out_ = bands_.size() > most_bands ? bands_.size() - most_bands : 0;
  bands_.resize(bands_.size() - left_out_);
  find_hours();
  labels_ = 0;
  QStringList spoken;
  const QFontMetrics small(type(TypeSize::small));
  for (const DayBand& band : bands_) {
    labels_ = std::max(labels_, small.horizontalAdvance(band.label) + 12);
    QStringList times;
    for (const Interval& each : band.booked) times << time_span(each, zone_);
    spoken << tr("%1: %2", "a unit: when it is booked")
                  .arg(band.label, times.isEmpty() ? tr("free") : times.join(", "));
  }
  setAccessibleName(tr("The day by machine"));
  setAccessibleDescription(spoken.join("; "));
  updateGeometry();
  update();
}

void DayStrip::find_hours() {
  first_hour_ = 9;
  last_hour_ = 21;
  for (const DayBand& band : bands_)
    for (const auto* list : {&band.booked, &band.chosen})
      for (const Interval& each : *list) {
        const LocalTime from = zone_.local(each.from), to = zone_.local(each.to - 1);
        if (from.day == day_) first_hour_ = std::min(first_hour_, from.hour);
        if (to.day == day_) last_hour_ = std::max(last_hour_, to.hour + 1);
      }
}

QSize DayStrip::sizeHint() const {
  const int rows = static_cast<int>(bands_.size()) + (left_out_ > 0 || bands_.empty() ? 1 : 0);
  return {320, axis + row * rows + 2 * edge};
}

qreal DayStrip::x(Instant t) const {
  const qreal left = std::min(labels_, width() / 2), room = width() - left - 10;
  const Instant from = zone_.instant({day_, first_hour_, 0, 0});
  const auto seconds = static_cast<qreal>(last_hour_ - first_hour_) * 3600;
  const qreal share = static_cast<qreal>(t.seconds - from.seconds) / seconds;
  return left + room * std::clamp(share, 0.0, 1.0);
}

void DayStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(type(TypeSize::small));
  const Palette& p = wm::app::palette();
  painter.setPen(p.quiet);
  if (bands_.empty()) {
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter, tr("No machine is booked on this day."));
    return;
  }
  paint_hours(painter);
  int top = axis;
  for (const DayBand& band : bands_) {
    paint_band(painter, band, top);
    top += row;
  }
  painter.setPen(p.quiet);
  if (left_out_ > 0)
    painter.drawText(QRect(0, top, width(), row), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("and %1 more with bookings").arg(left_out_));
}

void DayStrip::paint_hours(QPainter& painter) const {
  const Palette& p = wm::app::palette();
  const int bottom = axis + row * static_cast<int>(bands_.size());
  // As many hours as there is room to write.
  const int each = painter.fontMetrics().horizontalAdvance(QStringLiteral("00")) + 16;
  const int room = std::max(1, (width() - std::min(labels_, width() / 2)) / each);
  const int step = std::max(1, (last_hour_ - first_hour_ + room - 1) / room);
  for (int hour = first_hour_; hour <= last_hour_; hour += step) {
    const Instant t = hour == 24 ? zone_.start(day_ + 1) : zone_.instant({day_, hour, 0, 0});
    painter.setPen(QPen(p.line, 1));
    painter.drawLine(QPointF(x(t), axis - 3), QPointF(x(t), bottom));
    painter.setPen(p.quiet);
    painter.drawText(QRectF(x(t) - 20, 0, 40, axis - 4), Qt::AlignHCenter | Qt::AlignVCenter,
                     QString::number(hour));
  }
}

void DayStrip::paint_band(QPainter& painter, const DayBand& band, int top) const {
  const Palette& p = wm::app::palette();
  const int left = std::min(labels_, width() / 2);
  painter.setPen(p.text);
  painter.drawText(QRect(0, top, left - 8, row), Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(band.label, Qt::ElideRight, left - 8));
  const qreal base = top + row - 6;
  painter.setPen(QPen(p.quiet, 1));
  painter.drawLine(QPointF(left, base), QPointF(width() - 10, base));
  painter.setPen(Qt::NoPen);
  for (const Interval& each : band.booked) {
    painter.setBrush(p.half);
    painter.drawRect(QRectF(x(each.from) + 0.5, top + 5, x(each.to) - x(each.from) - 1, base - top - 5));
  }
  for (const Interval& each : band.chosen) {
    const QRectF box(x(each.from) + 0.5, top + 5, x(each.to) - x(each.from) - 1, base - top - 5);
    painter.setBrush(QBrush(p.full, Qt::BDiagPattern));
    painter.setPen(QPen(p.full, 1.4));
    painter.drawRect(box);
    painter.setPen(Qt::NoPen);
  }
  if (band.out_of_service) {
    painter.setPen(p.text);
    painter.drawText(QRect(left + 6, top, width() - left, row - 7), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("out of service"));
  }
}

}  // namespace wm::app
