// Plans as somebody follows them, on machines whose scales are off and boards that are uneven: reckoned in
// doubles, apart from core, by what happens at the cutterhead.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <random>

#include "core/passes/joint.h"
#include "core/passes/plane.h"

namespace {

using namespace wm;

constexpr double tiny = 1e-9;

std::size_t pieces() {
  const char* asked = std::getenv("WM_PIECES");
  return asked ? std::strtoull(asked, nullptr, 10) : 20'000;
}

/// Tries that many, where every tenth one or so can be planned; were hardly any, that is a mistake too.
constexpr std::size_t most_tries = 20;

/// Everything that chance decides.
struct Chance {
  std::mt19937_64 bits;
  long whole(long low, long high) { return std::uniform_int_distribution<long>(low, high)(bits); }
  /// Often at an end: that is where limits are broken.
  double between(double low, double high) {
    const long pick = whole(0, 4);
    if (pick == 0) return low;
    return pick == 1 ? high : std::uniform_real_distribution<double>(low, high)(bits);
  }
  Inches in_64ths(long low, long high) { return inches(whole(low, high), 64); }
};

double number(const Inches& length) { return length.count.get_d(); }

LimitsCard some_limits(Chance& chance) {
  const long deepest = chance.whole(2, 12);
  const Inches scale_marks[] = {inches(1, 64), inches(1, 32), millimetres(1, 2), inches(1, 100)};
  return {{{inches(6), inches(deepest, 64)}, {inches(12), inches(chance.whole(1, deepest), 64)}},
          inches(chance.whole(4, 12)),
          inches(1, 4),
          inches(chance.whole(1, 6), 128),
          scale_marks[chance.whole(0, 3)],
          chance.in_64ths(0, 8)};
}

PlanerCard some_planer(Chance& chance) {
  const Inches turns[] = {inches(5, 32), inches(1, 8),   inches(1, 16),
                          inches(1, 10), millimetres(4), millimetres(3, 2)};
  return {some_limits(chance), {turns[chance.whole(0, 5)], static_cast<int>(chance.whole(8, 100))}};
}

Stock some_stock(Chance& chance) {
  const Inches marks[] = {inches(1, 1000), inches(1, 128), millimetres(1, 10), millimetres(1, 20)};
  const Inches final = chance.in_64ths(16, 96);
  const Inches off = chance.whole(0, 3) == 0 ? inches(chance.whole(1, 60), 1000) : chance.in_64ths(1, 80);
  return {
      inches(chance.whole(10, 60)), inches(chance.whole(1, 12)), final + off, chance.in_64ths(0, 4), final,
      marks[chance.whole(0, 3)]};
}

/// A planer with a board on it: what is really there.
struct Planer {
  double gap = 0;             // from bed to cutterhead
  std::vector<double> board;  // its thickness here and there
  double deepest = 0;         // of all cuts so far
  std::size_t feeds = 0;

  double thickest() const { return *std::max_element(board.begin(), board.end()); }
  /// Whether anything was cut.
  bool feed() {
    const double cut = thickest() - gap;
    ++feeds;
    deepest = std::max(deepest, cut);
    for (double& thick : board) thick = std::min(thick, gap);
    return cut > tiny;
  }
};

std::vector<double> uneven_board(Chance& chance, const Stock& stock) {
  const double half_mark = number(stock.marks) / 2, read = number(stock.thickest);
  const double measured = chance.between(read - half_mark, read + half_mark);
  const double highest = measured + chance.between(0, number(stock.uneven));
  std::vector<double> board{measured, highest};
  for (int i = 0; i < 4; ++i) board.push_back(chance.between(measured - 0.1, highest));
  return board;
}

Inches measured(Chance& chance, const Planer& planer, const Stock& stock) {
  const double mark = number(stock.marks);
  // Between two marks either may be read where both are as near.
  const double marks = planer.thickest() / mark;
  const double nearest = std::round(marks + chance.between(-tiny, tiny));
  return stock.marks * fraction(static_cast<long>(nearest));
}

void turn(Planer& planer, const PlanerCard& card, const WheelMove& move) {
  const double turns = static_cast<double>(move.turns) + move.divisions.get_d() / card.wheel.divisions;
  planer.gap -= number(card.wheel.turn) * turns;
}

/// Follows the plan as it is shown, row by row, as far as something has been cut. Whether that was.
bool find_high_spot(Planer& planer, const PlanerCard& card, const PassPlan& plan, double off) {
  planer.gap = number(*plan.passes[0].setting) + off;
  if (planer.feed()) return true;
  for (const Pass& pass : plan.passes) {
    if (pass.kind == PassKind::by_scale) continue;
    if (!pass.wheel) return false;
    turn(planer, card, *pass.wheel);
    if (planer.feed()) return true;
  }
  return false;
}

/// Works the passes that are left, and measures where the next cannot be set without; `often`: after others
/// too, as somebody does who trusts nothing.
void work_to_size(Chance& chance, Planer& planer, const PlanerCard& card, const Stock& stock, bool often) {
  for (int measures = 0; measures < 300; ++measures) {
    const auto left = passes_left(card, stock, measured(chance, planer, stock));
    REQUIRE(left);
    if (left->passes.empty()) return;
    for (const Pass& pass : left->passes) {
      if (!pass.wheel) break;
      turn(planer, card, *pass.wheel);
      planer.feed();
      if (pass.kind == PassKind::last) return;
      if (often && chance.whole(0, 2) == 0) break;
    }
  }
  FAIL_CHECK("It is never done.");
}

/// What nobody can set before it is measured: all that comes after the first cut.
bool is_set_unmeasured(const PassPlan& plan) {
  return std::any_of(plan.passes.begin(), plan.passes.end(), [](const Pass& pass) {
    const bool after = pass.kind == PassKind::take || pass.kind == PassKind::last;
    return after && pass.wheel.has_value();
  });
}

}  // namespace

TEST_CASE("No simulated cut is deeper than the card's limit, whatever the scale's error and the board",
          "[passes]") {
  Chance chance{std::mt19937_64(20'261'126)};
  std::size_t planned = 0, felt_in_vain = 0, too_deep = 0, too_many = 0, off_size = 0, below_floor = 0,
              set_unmeasured = 0;
  for (std::size_t tried = 0; planned < pieces() && tried < most_tries * pieces(); ++tried) {
    const PlanerCard card = some_planer(chance);
    const Stock stock = some_stock(chance);
    const auto plan = plan_passes(card, stock);
    if (!plan) continue;
    ++planned;
    const double error = number(card.limits.scale_error);
    const double limit =
        number(stock.width <= inches(6) ? card.limits.depths[0].deepest : card.limits.depths[1].deepest);
    Planer planer;
    planer.board = uneven_board(chance, stock);
    felt_in_vain += !find_high_spot(planer, card, *plan, chance.between(-error, error));
    const bool often = chance.whole(0, 1) == 0;
    work_to_size(chance, planer, card, stock, often);
    too_deep += planer.deepest > limit + tiny;
    // Each further measure may be a mark off, and cost a pass.
    too_many += !often && planer.feeds > plan->passes.size();
    set_unmeasured += is_set_unmeasured(*plan);
    below_floor += plan->floor > plan->fewest || plan->fewest > plan->passes.size();
    off_size += std::abs(planer.thickest() - number(stock.final)) > number(stock.marks) / 2 + 2 * tiny;
  }
  CHECK(planned == pieces());
  CHECK(felt_in_vain == 0);
  CHECK(too_deep == 0);
  CHECK(too_many == 0);
  CHECK(set_unmeasured == 0);
  CHECK(below_floor == 0);
  CHECK(off_size == 0);
}

TEST_CASE(
    "No simulated pass of a jointer is deeper than the card's limit, and no board ends too thin or too "
    "narrow",
    "[passes]") {
  Chance chance{std::mt19937_64(1'959)};
  std::size_t planned = 0, edges = 0, too_deep = 0, too_thin = 0, never_flat = 0;
  for (std::size_t tried = 0; planned < pieces() && tried < most_tries * pieces(); ++tried) {
    JointerCard card{some_limits(chance)};
    if (chance.whole(0, 1) == 0) card.narrowest = chance.in_64ths(8, 64);
    const bool edge = chance.whole(0, 1) == 0;
    const Inches across = inches(chance.whole(1, 12)), down = chance.in_64ths(14, 96);
    BoardToJoint board{edge ? Joint::edge : Joint::face,
                       inches(30),
                       edge ? down : across,
                       edge ? across : down,
                       chance.in_64ths(1, 24),
                       true,
                       true};
    if (!plan_joint(card, board)) continue;
    ++planned;
    edges += edge;
    const double error = number(card.limits.scale_error);
    const double limit =
        number(across <= inches(6) ? card.limits.depths[0].deepest : card.limits.depths[1].deepest);
    const double least = number(edge ? card.narrowest.value_or(card.limits.thinnest) : card.limits.thinnest);
    double hollow = number(board.hollow), left = number(down);
    int passes = 0;
    for (; hollow > tiny && passes < 1000; ++passes) {
      // Planned anew after each pass, from what is still hollow and still there.
      board.hollow = {Fraction(hollow)};
      (edge ? board.width : board.thickness) = {Fraction(left + tiny)};
      const auto next = plan_joint(card, board);
      REQUIRE(next);
      const double cut = std::max(0.0, number(next->passes[0].setting) + chance.between(-error, error));
      too_deep += cut > limit + tiny;
      hollow -= cut;
      left -= cut;
    }
    never_flat += passes == 1000;
    too_thin += left < least - tiny;
  }
  CHECK(planned == pieces());
  CHECK(edges > pieces() / 4);
  CHECK(too_deep == 0);
  CHECK(too_thin == 0);
  CHECK(never_flat == 0);
}
