#pragma once
// Places in a picture, in per mille of its width and height from the top left corner, so that a picture may
// be drawn at any size.
#include <variant>
#include <vector>

namespace wm::teach {

struct Point {
  int x = 0, y = 0;  // 0 to 1000
  friend bool operator==(const Point&, const Point&) = default;
};
/// left < right, top < bottom.
struct Rectangle {
  int left = 0, top = 0, right = 0, bottom = 0;
  friend bool operator==(const Rectangle&, const Rectangle&) = default;
};
/// Three corners or more; where its outline crosses itself, inside goes by the even-odd rule.
struct Polygon {
  std::vector<Point> corners;
  friend bool operator==(const Polygon&, const Polygon&) = default;
};
using Region = std::variant<Rectangle, Polygon>;

/// Whether a point lies in the region or on its outline; exact.
bool holds(const Region& region, Point point);

}  // namespace wm::teach
