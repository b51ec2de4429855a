#include "core/passes/plane.h"

#include <algorithm>

#include "core/measure/show.h"
#include "core/passes/common.h"

namespace wm {
namespace {

const Inches nothing;

/// What settings are reckoned from, for one board on one machine.
struct Reckoning {
  Inches deepest, light, division;
  Inches half_mark;             // what a reading of the caliper may be off
  Inches tallest, surely_tall;  // the most that its thickest place can be, and the least
};

Reckoning reckon(const PlanerCard& card, const Stock& stock, const Inches& deepest) {
  const Inches half_mark = stock.marks * fraction(1, 2);
  return {deepest,   std::min(card.limits.light, deepest),      division(card.wheel),
          half_mark, stock.thickest + half_mark + stock.uneven, stock.thickest - half_mark};
}

/// The most that can be read off once something has been cut.
Inches most_measured(const Reckoning& reckoned) { return reckoned.tallest + reckoned.half_mark; }

/// What the sizes themselves refuse.
std::optional<Problem> size_refused(const PlanerCard& card, const Stock& stock) {
  if (std::min({stock.length, stock.width, stock.thickest, stock.final, stock.marks}) <= nothing ||
      stock.uneven < nothing)
    return Problem{"stock", "A size of the stock is zero or missing.",
                   "Measure length, width and the thickest place, and say what it is to become and what is "
                   "measured with."};
  if (stock.final < card.limits.thinnest)
    return Problem{"final",
                   to_text(stock.final) + " is thinner than this machine leaves it: " +
                       to_text(card.limits.thinnest) + ". Thin stock breaks up under the cutterhead.",
                   "Leave it thicker, or ask a qualified instructor for another way."};
  if (stock.final >= stock.thickest)
    return Problem{"final", "It is no thicker than that now: " + to_text(stock.thickest) + ".",
                   "Choose thicker stock, or leave it as it is."};
  return std::nullopt;
}

/// What the wheel and the caliper refuse.
std::optional<Problem> setting_refused(const Stock& stock, const Reckoning& reckoned) {
  if (reckoned.light < reckoned.division + stock.marks)
    return Problem{"light",
                   "A light pass (" + to_text(reckoned.light) +
                       ") can't be set: a division of the wheel moves " + to_text(reckoned.division) +
                       ", and the caliper reads to " + to_text(stock.marks) + ".",
                   "Use a finer caliper, or a machine whose wheel is divided more finely."};
  if (reckoned.surely_tall - stock.final < reckoned.division)
    return Problem{"final",
                   "Less is to come off than one division of the wheel (" + to_text(reckoned.division) + ").",
                   "Sand or scrape it to size."};
  return std::nullopt;
}

/// How far the wheel is turned on from pass to pass while nothing has been cut: a light pass, and never past
/// the final size, since what is not cut yet is at least as thick as it surely is.
Inches feeling_step(const Stock& stock, const Reckoning& reckoned) {
  const Inches most = std::min(reckoned.light, reckoned.surely_tall - stock.final);
  return reckoned.division * Fraction(steps_within(most, reckoned.division));
}

/// Were the scale off all the way, this would take no more than a light pass, nor go past the final size.
Inches first_setting(const PlanerCard& card, const Stock& stock, const Reckoning& reckoned) {
  const Inches least = card.limits.scale_error + std::max(reckoned.tallest - reckoned.light, stock.final);
  return card.limits.scale_marks * Fraction(steps_around(least, card.limits.scale_marks));
}

/// The first pass, and those that go on while nothing has been cut.
std::vector<Pass> finding(const PlanerCard& card, const Stock& stock, const Reckoning& reckoned) {
  const Inches error = card.limits.scale_error;
  Inches setting = first_setting(card, stock, reckoned);
  const Inches step = feeling_step(stock, reckoned);
  std::vector<Pass> passes{{PassKind::by_scale, setting,
                            std::max(nothing, reckoned.tallest + error - setting), std::nullopt, true, true}};
  for (Inches highest = setting + error; highest >= reckoned.surely_tall;) {
    highest = highest - step;
    setting = setting - step;
    passes.push_back({PassKind::feel, setting, step, wheel_move(card.wheel, step), false, true});
  }
  return passes;
}

/// Passes of whole divisions that turn the wheel on by `divisions` in all.
void take_off(std::vector<Pass>& passes, const PlanerCard& card, const Reckoning& reckoned, Inches from,
              const Whole& divisions) {
  for (const Whole& now : evenly(divisions, steps_within(reckoned.deepest, reckoned.division))) {
    const Inches by = reckoned.division * Fraction(now);
    from = from - by;
    passes.push_back({PassKind::take, from, by, wheel_move(card.wheel, by), passes.empty(), false});
  }
  if (!passes.empty()) passes.back().measured_after = true;
}

std::vector<Pass> left_from(const PlanerCard& card, const Stock& stock, const Reckoning& reckoned,
                            const Inches& measured) {
  std::vector<Pass> passes;
  const Inches rest = measured - stock.final;
  if (rest <= nothing) return passes;
  if (rest > reckoned.light) {
    // What is left for the last pass is measured again, and may then be a mark more.
    const Inches off = rest - (reckoned.light - stock.marks);
    take_off(passes, card, reckoned, measured, steps_around(off, reckoned.division));
  }
  std::optional<WheelMove> wheel;
  if (passes.empty()) wheel = wheel_move(card.wheel, rest);
  passes.push_back({PassKind::last, stock.final, reckoned.light, wheel, true, true});
  return passes;
}

/// What may follow the first cut, as many passes as it can take. A thinner measure may part what is left into
/// fewer and deeper ones, so each may cut as deep as any.
std::vector<Pass> not_measured_yet(const PlanerCard& card, const Stock& stock, const Reckoning& reckoned) {
  std::vector<Pass> passes = left_from(card, stock, reckoned, most_measured(reckoned));
  const Inches most = reckoned.division * Fraction(steps_within(reckoned.deepest, reckoned.division));
  for (Pass& pass : passes) {
    pass.wheel.reset();
    if (pass.kind != PassKind::take) continue;
    pass.setting.reset();
    pass.most = most;
  }
  return passes;
}

/// Rounded up at each end: a plan that is refused for its length is far too long.
bool too_many(const PlanerCard& card, const Stock& stock, const Reckoning& reckoned) {
  const Inches most = reckoned.division * Fraction(steps_within(reckoned.deepest, reckoned.division));
  const Inches felt = first_setting(card, stock, reckoned) + card.limits.scale_error - reckoned.surely_tall;
  return felt / feeling_step(stock, reckoned) + (reckoned.tallest - stock.final) / most > most_passes;
}

Expected<Reckoning> reckoned_for(const PlanerCard& card, const Stock& stock) {
  if (auto refused = size_refused(card, stock)) return tl::unexpected(*std::move(refused));
  const auto deepest = deepest_pass(card.limits, mistakes_in(card), stock.length, stock.width);
  if (!deepest) return tl::unexpected(deepest.error());
  const Reckoning reckoned = reckon(card, stock, *deepest);
  if (auto refused = setting_refused(stock, reckoned)) return tl::unexpected(*std::move(refused));
  if (too_many(card, stock, reckoned)) return tl::unexpected(too_many_passes("final"));
  return reckoned;
}

}  // namespace

WheelMove wheel_move(const Wheel& wheel, const Inches& by) {
  const Fraction turns = by / wheel.turn;
  const Whole whole = floor_of(turns);
  return {whole.get_si(), (turns - whole) * wheel.divisions};
}

Expected<PassPlan> plan_passes(const PlanerCard& card, const Stock& stock) {
  const auto reckoned = reckoned_for(card, stock);
  if (!reckoned) return tl::unexpected(reckoned.error());
  PassPlan plan{finding(card, stock, *reckoned), 0,
                ceil_of((stock.thickest - stock.final) / reckoned->deepest), reckoned->deepest};
  const Inches thinnest =
      first_setting(card, stock, *reckoned) - card.limits.scale_error - reckoned->half_mark;
  plan.fewest = 1 + left_from(card, stock, *reckoned, thinnest).size();
  const auto left = not_measured_yet(card, stock, *reckoned);
  plan.passes.insert(plan.passes.end(), left.begin(), left.end());
  return plan;
}

Expected<PassesLeft> passes_left(const PlanerCard& card, const Stock& stock, const Inches& measured) {
  const auto reckoned = reckoned_for(card, stock);
  if (!reckoned) return tl::unexpected(reckoned.error());
  if (measured <= nothing)
    return tl::unexpected(Problem{"measured", "Nothing is as thin as " + to_text(measured) + ".",
                                  "Measure again, where it was cut and is thickest."});
  if (measured > most_measured(*reckoned))
    return tl::unexpected(Problem{"measured", to_text(measured) + " is thicker than the board was.",
                                  "Measure again, where it was cut and is thickest."});
  const Inches rest = std::max(nothing, measured - stock.final);
  return PassesLeft{left_from(card, stock, *reckoned, measured), ceil_of(rest / reckoned->deepest),
                    reckoned->deepest};
}

}  // namespace wm
