// Plans from rough to final size, with the arithmetic of one of them written out.
#include "core/passes/plane.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

/// Common practice, no source: at most 1/8 in a pass, stock of 6 in or longer, one turn of the wheel 5/32 in,
/// a scale within 1/16. The rest is ours.
PlanerCard planer() {
  PlanerCard made;
  made.limits = {{{inches(8), inches(1, 8)}, {inches(12), inches(1, 16)}},
                 inches(6),
                 inches(1, 4),
                 inches(1, 32),
                 inches(1, 64),
                 inches(1, 16)};
  made.wheel = {inches(5, 32), 20};
  return made;
}

/// Nominal 2x6 is 1 1/2 in thick.
Stock two_by_six() {
  return {inches(24), inches(11, 2), inches(3, 2), inches(0), inches(1), inches(1, 1000)};
}

std::string not_planed(const PlanerCard& card, const Stock& stock) {
  const auto plan = plan_passes(card, stock);
  if (plan) return "planned";
  CHECK_FALSE(plan.error().what.empty());
  CHECK_FALSE(plan.error().remedy.empty());
  return plan.error().where;
}

}  // namespace

TEST_CASE("An eighth is 0.8 of a turn of 5/32, which is 16 of 20 divisions", "[passes]") {
  const Wheel wheel = planer().wheel;
  CHECK(inches(1, 8) / wheel.turn == fraction(8, 10));
  CHECK(wheel_move(wheel, inches(1, 8)) == WheelMove{0, fraction(16)});
  CHECK(wheel_move(wheel, inches(1, 2)) == WheelMove{3, fraction(4)});
  CHECK(division(wheel) == inches(1, 128));
}

TEST_CASE("From 1.5 in to 1 in under 1/8 a pass takes four passes by arithmetic, and six to ten by plan",
          "[passes]") {
  const auto plan = plan_passes(planer(), two_by_six());
  REQUIRE(plan);
  CHECK(plan->floor == 4);
  CHECK(plan->deepest == inches(1, 8));

  // The caliper reads to 0.001, so it may be 1.5005 thick. The scale is within 1/16. A first pass that takes
  // no more than a light one even so: 1.5005 + 0.0625 - 0.03125 = 1.53175, and the next mark of the scale
  // above is 1 35/64.
  REQUIRE(plan->passes.size() == 10);
  const Pass& first = plan->passes[0];
  CHECK(first.kind == PassKind::by_scale);
  CHECK(first.setting == inches(99, 64));
  CHECK(first.most == inches(15005, 10000) + inches(1, 16) - inches(99, 64));
  // Off the other way it would stand at 1.609375. By 1/32 at a time it is surely below 1.4995 at the
  // fourth: 1.578125, 1.546875, 1.515625, 1.484375.
  for (long i = 1; i <= 4; ++i)
    CHECK(plan->passes[static_cast<std::size_t>(i)] == Pass{PassKind::feel, inches(99 - 2 * i, 64),
                                                            inches(1, 32), WheelMove{0, fraction(4)}, false,
                                                            true});
  // Then 1.501 at most is measured: 0.501 to go, of which the last pass may take 0.03125, and a mark less is
  // planned. 0.47075 is 60.3 divisions of 1/128, so 61; at most 16 of them a pass, so four passes. What they
  // are set to goes by what is measured, and so does the last.
  for (std::size_t i = 0; i < 4; ++i)
    CHECK(plan->passes[5 + i] ==
          Pass{PassKind::take, std::nullopt, inches(1, 8), std::nullopt, i == 0, i == 3});
  CHECK(plan->passes[9] == Pass{PassKind::last, inches(1), inches(1, 32), std::nullopt, true, true});
  // Where the first pass cuts as much as it can, 1.483875 is measured: 0.453625 is 58.1 divisions, again four
  // passes.
  CHECK(plan->fewest == 1 + 4 + 1);
}

TEST_CASE("A pass that might only just touch is followed by another to feel with", "[passes]") {
  Stock stock = two_by_six();
  stock.marks = inches(1, 128);
  stock.uneven = inches(3, 128);
  // It is from 1.5 - 1/256 to 1.5 + 1/256 + 3/128 thick. Set at the latter and 1/32 more, which is on a mark
  // of this scale, and off by 1/16 upwards, four times 1/32 less is 1.5 - 1/256: that takes nothing from a
  // board as thin as it can be.
  PlanerCard finely_marked = planer();
  finely_marked.limits.scale_marks = inches(1, 256);
  const auto plan = plan_passes(finely_marked, stock);
  REQUIRE(plan);
  CHECK(plan->passes[0].setting == inches(3, 2) + inches(1, 256) + inches(3, 128) + inches(1, 32));
  std::size_t feels = 0;
  for (const Pass& pass : plan->passes) feels += pass.kind == PassKind::feel;
  CHECK(feels == 5);
}

TEST_CASE("Once something has been cut and measured, the rest of the plan follows from the measure",
          "[passes]") {
  const auto left = [](const Inches& measured) { return passes_left(planer(), two_by_six(), measured); };
  // 0.469 to go, of which the last pass may take 0.03125, and a mark less is planned: 0.43875 is 56.2
  // divisions of 1/128, so 57 in four passes.
  const auto measured = left(inches(1469, 1000));
  REQUIRE(measured);
  CHECK(measured->floor == 4);
  CHECK(measured->deepest == inches(1, 8));
  REQUIRE(measured->passes.size() == 5);
  const long divisions[] = {15, 14, 14, 14};
  Inches at = inches(1469, 1000);
  for (std::size_t i = 0; i < 4; ++i) {
    at = at - inches(divisions[i], 128);
    CHECK(measured->passes[i] == Pass{PassKind::take, at, inches(divisions[i], 128),
                                      WheelMove{0, fraction(divisions[i])}, i == 0, i == 3});
  }
  // By a measure of its own: 1.0236875 should be left, and 1.024 is read, which is 3.072 divisions.
  CHECK(measured->passes[4] == Pass{PassKind::last, inches(1), inches(1, 32), std::nullopt, true, true});
  CHECK(left(inches(1024, 1000))->passes ==
        std::vector{
            Pass{PassKind::last, inches(1), inches(1, 32), WheelMove{0, fraction(3072, 1000)}, true, true}});
  CHECK(left(inches(1024, 1000))->floor == 1);
  CHECK(left(inches(33, 32))->passes.size() == 1);
  CHECK(left(inches(1032, 1000))->passes.size() == 2);
  // As asked, and thinner.
  for (const Inches& done : {inches(1), inches(99, 100)}) {
    CHECK(left(done)->passes.empty());
    CHECK(left(done)->floor == 0);
  }
}

TEST_CASE("A measure that cannot be is refused", "[passes]") {
  const auto refused = [](const Inches& measured) {
    const auto left = passes_left(planer(), two_by_six(), measured);
    return left ? "planned" : left.error().where + ": " + left.error().what;
  };
  // Half a thousandth more than it can be, read half a thousandth high.
  CHECK(refused(inches(1501, 1000)) == "planned");
  CHECK(refused(inches(1502, 1000)) == "measured: 1.502 in is thicker than the board was.");
  CHECK(refused(inches(0)) == "measured: Nothing is as thin as 0 in.");
  Stock uneven = two_by_six();
  uneven.uneven = inches(1, 64);
  CHECK(passes_left(planer(), uneven, inches(1502, 1000)));
}

TEST_CASE("Where less is measured than could be, fewer passes may take more each, and the plan says so",
          "[passes]") {
  // 48 divisions in three passes of 16 each, where the plan's four would be 16, 15, 15 and 15.
  const auto left = passes_left(planer(), two_by_six(), inches(1) + inches(48, 128) + inches(30, 1000));
  REQUIRE(left);
  REQUIRE(left->passes.size() == 4);
  CHECK(left->passes[1].most == inches(1, 8));
  CHECK(plan_passes(planer(), two_by_six())->passes[6].most == inches(1, 8));
}

TEST_CASE("Wider stock is cut less deep", "[passes]") {
  Stock wide = two_by_six();
  wide.width = inches(9);
  const auto plan = plan_passes(planer(), wide);
  REQUIRE(plan);
  CHECK(plan->deepest == inches(1, 16));
  CHECK(plan->floor == 8);
  wide.width = inches(8);
  CHECK(plan_passes(planer(), wide)->floor == 4);
}

TEST_CASE("What can't be planed is refused with the reason and the remedy", "[passes]") {
  Stock stock = two_by_six();
  CHECK(not_planed(planer(), stock) == "planned");
  stock.length = inches(6);
  CHECK(not_planed(planer(), stock) == "planned");
  stock.length = inches(5);
  CHECK(not_planed(planer(), stock) == "length");
  CHECK(plan_passes(planer(), stock).error().what ==
        "Stock 5 in long is too short: the maker allows 6 in or more. It can tip, turn, or be thrown.");
  stock = two_by_six();
  stock.width = inches(12) + inches(1, 64);
  CHECK(not_planed(planer(), stock) == "width");
  stock = two_by_six();
  stock.final = inches(15, 64);
  CHECK(not_planed(planer(), stock) == "final");
  stock.final = inches(3, 2);
  CHECK(not_planed(planer(), stock) == "final");
  // 1/128 and half a thousandth: what is less can be neither set nor felt for.
  stock.final = inches(3, 2) - inches(1, 128);
  CHECK(not_planed(planer(), stock) == "final");
  stock.final = inches(3, 2) - inches(1, 128) - inches(5, 10000);
  CHECK(not_planed(planer(), stock) == "planned");
  stock = two_by_six();
  stock.marks = inches(1, 32);
  CHECK(not_planed(planer(), stock) == "light");
  stock.marks = inches(0);
  CHECK(not_planed(planer(), stock) == "stock");
  stock = two_by_six();
  stock.uneven = -inches(1, 64);
  CHECK(not_planed(planer(), stock) == "stock");
}

TEST_CASE("A plan of hundreds of passes is refused", "[passes]") {
  Stock block = two_by_six();
  block.thickest = inches(20);
  CHECK(not_planed(planer(), block) == "planned");
  block.thickest = inches(30);
  CHECK(not_planed(planer(), block) == "final");
  CHECK(plan_passes(planer(), block).error().what == "That would take more than 200 passes.");
  PlanerCard unknown = planer();
  unknown.limits.scale_error = inches(10);
  CHECK(not_planed(unknown, two_by_six()) == "final");
}

TEST_CASE("A card without what the maker says makes no plan", "[passes]") {
  const auto with = [](auto change) {
    PlanerCard changed = planer();
    change(changed);
    return not_planed(changed, two_by_six());
  };
  CHECK(with([](PlanerCard& c) { c.limits.shortest.reset(); }) == "shortest");
  CHECK(with([](PlanerCard& c) { c.limits.shortest = inches(0); }) == "shortest");
  CHECK(with([](PlanerCard& c) { c.limits.depths.clear(); }) == "depths");
  CHECK(with([](PlanerCard& c) { c.limits.depths[0].deepest = inches(0); }) == "depths");
  CHECK(with([](PlanerCard& c) { c.limits.depths[1].deepest = inches(1, 4); }) == "depths");
  CHECK(with([](PlanerCard& c) { c.limits.depths[1].width = inches(8); }) == "depths");
  CHECK(with([](PlanerCard& c) { c.limits.thinnest = inches(0); }) == "thinnest");
  CHECK(with([](PlanerCard& c) { c.limits.light = inches(0); }) == "light");
  CHECK(with([](PlanerCard& c) { c.limits.scale_marks = inches(0); }) == "scale_marks");
  CHECK(with([](PlanerCard& c) { c.limits.scale_error = -inches(1, 64); }) == "scale_error");
  CHECK(with([](PlanerCard& c) { c.wheel.turn = inches(0); }) == "wheel");
  CHECK(with([](PlanerCard& c) { c.wheel.divisions = 0; }) == "wheel");
  CHECK(with([](PlanerCard& c) { c.wheel.divisions = 4; }) == "light");
}
