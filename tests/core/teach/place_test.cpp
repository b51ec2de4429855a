// Places in pictures, held against winding numbers.
#include "core/teach/place.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

namespace {

using namespace wm::teach;

/// Another way: the whole turns that the outline makes around a point, as angles. For points off the outline
/// of a polygon that does not cross itself it is inside where they are not 0.
bool turns_around(const std::vector<Point>& corners, Point p) {
  double sum = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point a = corners[i], b = corners[(i + 1) % corners.size()];
    sum += std::remainder(std::atan2(b.y - p.y, b.x - p.x) - std::atan2(a.y - p.y, a.x - p.x), 2 * M_PI);
  }
  return std::abs(sum) > M_PI;
}

/// Corners at rising angles around the middle: the outline can't cross itself.
std::vector<Point> star() {
  std::map<int, int> far;
  for (const int angle : *rc::gen::container<std::vector<int>>(12, rc::gen::inRange(0, 360)))
    far[angle] = *rc::gen::inRange(20, 480);
  std::vector<Point> corners;
  for (const auto& [angle, radius] : far)
    corners.push_back({500 + static_cast<int>(std::lround(radius * std::cos(angle * M_PI / 180))),
                       500 + static_cast<int>(std::lround(radius * std::sin(angle * M_PI / 180)))});
  return corners;
}

bool on_outline(const std::vector<Point>& corners, Point p) {
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point a = corners[i], b = corners[(i + 1) % corners.size()];
    const double whole = std::hypot(b.x - a.x, b.y - a.y);
    if (std::abs(std::hypot(p.x - a.x, p.y - a.y) + std::hypot(b.x - p.x, b.y - p.y) - whole) < 1e-9)
      return true;
  }
  return false;
}

}  // namespace

TEST_CASE("A rectangle holds its outline and nothing beside it", "[teach]") {
  const Region region = Rectangle{100, 200, 300, 400};
  for (const Point in : {Point{100, 200}, {300, 400}, {100, 400}, {200, 300}, {300, 200}})
    CHECK(holds(region, in));
  for (const Point out : {Point{99, 300}, {301, 300}, {200, 199}, {200, 401}})
    CHECK_FALSE(holds(region, out));
}

TEST_CASE("A polygon holds its corners, its outline and its inside", "[teach]") {
  const Region arrow = Polygon{{{100, 100}, {500, 300}, {100, 500}, {200, 300}}};
  for (const Point in :
       {Point{100, 100}, {500, 300}, {200, 300}, {150, 200}, {300, 200}, {300, 300}, {201, 300}})
    CHECK(holds(arrow, in));
  for (const Point out : {Point{199, 300}, {100, 300}, {501, 300}, {300, 199}, {99, 100}, {600, 300}})
    CHECK_FALSE(holds(arrow, out));
}

TEST_CASE("Inside of any outline that doesn't cross itself is where it turns around the point", "[teach]") {
  CHECK(rc::check([] {
    const auto corners = star();
    RC_PRE(corners.size() >= 3);
    const Point p{*rc::gen::inRange(0, 1001), *rc::gen::inRange(0, 1001)};
    if (on_outline(corners, p))
      RC_ASSERT(holds(Polygon{corners}, p));
    else
      RC_ASSERT(holds(Polygon{corners}, p) == turns_around(corners, p));
    for (const Point corner : corners) RC_ASSERT(holds(Polygon{corners}, corner));
  }));
}
