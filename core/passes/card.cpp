#include "core/passes/card.h"

#include <algorithm>

namespace wm {
namespace {

const Inches none;

bool in_order(const std::vector<DepthForWidth>& depths) {
  return std::adjacent_find(depths.begin(), depths.end(), [](const DepthForWidth& a, const DepthForWidth& b) {
           return b.width <= a.width || b.deepest > a.deepest;
         }) == depths.end();
}

bool all_above_zero(const std::vector<DepthForWidth>& depths) {
  return std::all_of(depths.begin(), depths.end(),
                     [](const DepthForWidth& step) { return step.width > none && step.deepest > none; });
}

}  // namespace

Inches division(const Wheel& wheel) { return wheel.turn * fraction(1, wheel.divisions); }

std::vector<Problem> mistakes_in(const std::vector<DepthForWidth>& depths) {
  if (depths.empty() || !all_above_zero(depths))
    return {{"depths", "The deepest pass is missing, or is zero.",
             "Write how deep a pass may be for stock up to each width, as the maker's manual has it."}};
  if (!in_order(depths))
    return {{"depths", "The widths do not rise, or wider stock may be cut deeper.",
             "Write the narrowest first, and for wider stock no deeper a pass."}};
  return {};
}

std::vector<Problem> mistakes_in(const LimitsCard& limits) {
  std::vector<Problem> found = mistakes_in(limits.depths);
  const auto refuse = [&](bool wrong, const char* where, const char* what, const char* remedy) {
    if (wrong) found.push_back({where, what, remedy});
  };
  refuse(!limits.shortest, "shortest", "The shortest length that the maker allows is missing.",
         "Look it up in the maker's manual and write it on the card: no plan is made without it.");
  refuse(limits.shortest && *limits.shortest <= none, "shortest", "The shortest length is not above zero.",
         "Write it as the maker's manual has it.");
  refuse(limits.thinnest <= none, "thinnest", "The thinnest stock is not above zero.",
         "Write it as the maker's manual has it.");
  refuse(limits.light <= none, "light", "A light pass that takes nothing.",
         "Write what a light pass takes at most.");
  refuse(limits.scale_marks <= none, "scale_marks", "The scale has no marks.",
         "Write how far apart the marks of the scale are.");
  refuse(limits.scale_error < none, "scale_error", "The scale's error is below zero.",
         "Write within how much the scale is, either way.");
  return found;
}

std::vector<Problem> mistakes_in(const PlanerCard& card) {
  std::vector<Problem> found = mistakes_in(card.limits);
  if (card.wheel.turn <= none || card.wheel.divisions < 1)
    found.push_back({"wheel", "What a turn of the wheel moves, or how it is divided, is missing.",
                     "Measure what one turn moves, and count the marks around the wheel."});
  return found;
}

std::vector<Problem> mistakes_in(const JointerCard& card) {
  std::vector<Problem> found = mistakes_in(card.limits);
  if (card.narrowest && *card.narrowest <= none)
    found.push_back({"narrowest", "The narrowest board is not above zero.",
                     "Write how narrow an edge may leave a board, or leave it out."});
  return found;
}

Inches narrowest_left(const JointerCard& card) { return card.narrowest.value_or(card.limits.thinnest); }

std::optional<Inches> deepest_for(const LimitsCard& limits, const Inches& width) {
  for (const DepthForWidth& step : limits.depths)
    if (width <= step.width) return step.deepest;
  return std::nullopt;
}

}  // namespace wm
