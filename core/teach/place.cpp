#include "core/teach/place.h"

#include <algorithm>

namespace wm::teach {
namespace {

/// Twice the area of the triangle, its sign the side of the line from a to b on which p lies. At most
/// 2,000,000.
int turn(Point a, Point b, Point p) { return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x); }

bool on_edge(Point a, Point b, Point p) {
  return turn(a, b, p) == 0 && std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) &&
         std::min(a.y, b.y) <= p.y && p.y <= std::max(a.y, b.y);
}

/// Whether a ray from p to the right crosses the edge: one end counts as below, so that a corner is crossed
/// once.
bool crosses(Point a, Point b, Point p) {
  if ((a.y > p.y) == (b.y > p.y)) return false;
  return (turn(a, b, p) > 0) == (b.y > a.y);
}

bool inside(const Rectangle& r, Point p) {
  return r.left <= p.x && p.x <= r.right && r.top <= p.y && p.y <= r.bottom;
}

bool inside(const Polygon& polygon, Point p) {
  bool odd = false;
  for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
    const Point a = polygon.corners[i], b = polygon.corners[(i + 1) % polygon.corners.size()];
    if (on_edge(a, b, p)) return true;
    if (crosses(a, b, p)) odd = !odd;
  }
  return odd;
}

}  // namespace

bool holds(const Region& region, Point point) {
  return std::visit([&](const auto& shape) { return inside(shape, point); }, region);
}

}  // namespace wm::teach
