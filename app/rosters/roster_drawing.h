#pragma once
// What every form of the roster draws with: words, ladders, notches and lines in black, on paper units.
#include <QFont>
#include <QPainter>

#include "core/records/record.h"

namespace wm::app {

enum class RosterInk { plain, quiet };

void draw_roster_text(QPainter& painter, const QRectF& box, const QFont& font, RosterInk ink,
                      const QString& words, int flags = Qt::AlignLeft | Qt::AlignVCenter);
void draw_roster_ladder(QPainter& painter, const QRectF& box, Rung rung);
/// A line across; `weight` in points. A hair is thin and pale, to lead the eye.
void draw_roster_rule(QPainter& painter, double x, double y, double width, double weight);
void draw_roster_hair(QPainter& painter, double x, double y, double width);
/// A tier's notches, and its words beside them.
void draw_roster_tier(QPainter& painter, QPointF at, int tier, const QString& words, double width);

/// What the words and pictures of a list mean, in two lines at its foot.
inline constexpr double roster_legend_height = 290;
void draw_roster_legend(QPainter& painter, const QRectF& box);

}  // namespace wm::app
