#pragma once
// The strip: a standing over time on a linear scale of days. Height is the rung; the past is solid, what is
// known to come is hatched; a tick stands where it falls, a hair-line at today.
#include <QPainter>
#include <vector>

#include "core/decide/answers.h"

namespace wm::app {

/// Instants on a line of pixels.
struct Scale {
  Instant from, to;
  qreal left = 0, width = 1;

  qreal x(Instant t) const;
  Instant at(qreal x) const;
};

/// `steps` begins at or before scale.from. `today` may lie outside of the scale.
void draw_strip(QPainter& painter, const QRectF& box, const Scale& scale,
                const std::vector<TimelineStep>& steps, Instant today);

}  // namespace wm::app
