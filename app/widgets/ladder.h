#pragma once
// The ladder: two rungs between two rails, filled up to where a person stands. Always beside its words.
#include <QPainter>
#include <QWidget>

#include "core/records/record.h"

namespace wm::app {

/// Draws it into `box` in the given ink (the rails and filled rungs) and, for empty rungs, `faint`.
void draw_ladder(QPainter& painter, const QRectF& box, Rung rung, const QColor& ink, const QColor& faint,
                 const QColor& rails);
/// A tier's number as that many notches (1 to 99; past 6 the number itself), left-aligned in `box`.
void draw_notches(QPainter& painter, const QRectF& box, int tier, const QColor& ink);

}  // namespace wm::app
