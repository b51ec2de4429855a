#include "core/passes/refuse.h"

#include "core/measure/show.h"

namespace wm {

std::string in_words(const Inches& length) { return to_text(in_unit(length, LengthUnit::inch)); }

Expected<Inches> deepest_pass(const LimitsCard& limits, const std::vector<Problem>& mistakes,
                              const Inches& length, const Inches& width) {
  const auto refuse = [](const char* where, std::string what, std::string remedy) {
    return tl::unexpected(Problem{where, std::move(what), std::move(remedy)});
  };
  if (!mistakes.empty()) return tl::unexpected(mistakes.front());
  if (length < *limits.shortest)
    return refuse("length",
                  "Stock " + in_words(length) + " long is too short: the maker allows " +
                      in_words(*limits.shortest) + " or more. It can tip, turn, or be thrown.",
                  "Take longer stock and cut it to length afterwards, or work it by hand.");
  const auto deepest = deepest_for(limits, width);
  if (!deepest)
    return refuse("width",
                  "A cut " + in_words(width) +
                      " wide is wider than this machine takes: " + in_words(limits.depths.back().width) + ".",
                  "Rip it and glue it up afterwards, or use a wider machine.");
  return *deepest;
}

}  // namespace wm
