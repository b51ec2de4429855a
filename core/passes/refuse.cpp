#include "core/passes/refuse.h"

#include "core/measure/show.h"

namespace wm {

Problem too_many_passes(const char* where) {
  return {where, "That would take more than " + std::to_string(most_passes) + " passes.",
          "Saw it nearer to its size first, and look whether the card's figures are right."};
}

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
