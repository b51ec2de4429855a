#include "core/passes/common.h"

#include "core/measure/show.h"

namespace wm {

Problem too_many_passes(const char* where) {
  return {where, "That would take more than " + std::to_string(most_passes) + " passes.",
          "Saw it nearer to its size first, and look whether the card's figures are right."};
}

std::vector<Whole> evenly(Whole total, const Whole& most) {
  std::vector<Whole> parts;
  for (Whole left = ceil_of(Fraction(total) / most); left > 0; --left) {
    parts.push_back(ceil_of(Fraction(total) / left));
    total -= parts.back();
  }
  return parts;
}

Whole steps_within(const Inches& length, const Inches& steps) { return floor_of(length / steps); }
Whole steps_around(const Inches& length, const Inches& steps) { return ceil_of(length / steps); }

Expected<Inches> deepest_pass(const LimitsCard& limits, const std::vector<Problem>& mistakes,
                              const Inches& length, const Inches& width) {
  const auto refuse = [](const char* where, std::string what, std::string remedy) {
    return tl::unexpected(Problem{where, std::move(what), std::move(remedy)});
  };
  if (!mistakes.empty()) return tl::unexpected(mistakes.front());
  if (length < *limits.shortest)
    return refuse("length",
                  "Stock " + to_text(length) + " long is too short: the maker allows " +
                      to_text(*limits.shortest) + " or more. It can tip, turn, or be thrown.",
                  "Take longer stock and cut it to length afterwards, or work it by hand.");
  const auto deepest = deepest_for(limits, width);
  if (!deepest)
    return refuse("width",
                  "A cut " + to_text(width) +
                      " wide is wider than this machine takes: " + to_text(limits.depths.back().width) + ".",
                  "Rip it and glue it up afterwards, or use a wider machine.");
  return *deepest;
}

}  // namespace wm
