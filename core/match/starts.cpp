#include <algorithm>
#include <numeric>
#include <set>

#include "core/match/ways.h"

namespace wm::match {
namespace {

std::int64_t common_step(const std::vector<Start>& starts) {
  std::int64_t step = 0;
  for (const Start& each : starts) step = std::gcd(step, each.from - starts.front().from);
  return step;
}

std::set<std::int64_t> ends_of_runs(const std::vector<Start>& starts, std::int64_t step) {
  std::set<std::pair<std::size_t, std::int64_t>> there;
  for (const Start& each : starts) there.emplace(each.run, each.from);
  std::set<std::int64_t> ends;
  for (const auto& [run, from] : there)
    if (!there.contains({run, from - step}) || !there.contains({run, from + step})) ends.insert(from);
  return ends;
}

}  // namespace

std::vector<std::int64_t> starts_needed(const std::vector<Start>& starts) {
  const std::int64_t step = common_step(starts);
  if (step == 0) return {starts.front().from};
  std::set<std::int64_t> all, lengths;
  for (const Start& each : starts) {
    all.insert(each.from);
    lengths.insert(each.seconds);
  }
  std::set<std::int64_t> needed = ends_of_runs(starts, step);
  std::vector<std::int64_t> fresh(needed.begin(), needed.end());
  while (!fresh.empty()) {
    const std::int64_t from = fresh.back();
    fresh.pop_back();
    for (const std::int64_t length : lengths) {
      const std::int64_t apart = (length + step - 1) / step * step;  // the next can begin at a step only
      for (const std::int64_t other : {from - apart, from + apart})
        // Chains may pass over times at which nothing of this block begins.
        if (other >= *all.begin() && other <= *all.rbegin() && needed.insert(other).second)
          fresh.push_back(other);
    }
  }
  std::vector<std::int64_t> out;
  std::set_intersection(needed.begin(), needed.end(), all.begin(), all.end(), std::back_inserter(out));
  return out;
}

std::vector<Interval> blocks(const std::vector<Spot>& spots) {
  std::vector<Interval> all;
  for (const Spot& each : spots) all.push_back({{each.from}, {each.to}});
  std::sort(all.begin(), all.end(), [](const Interval& a, const Interval& b) { return a.from < b.from; });
  std::vector<Interval> out;
  for (const Interval& each : all) {
    if (!out.empty() && each.from <= out.back().to)
      out.back().to = std::max(out.back().to, each.to);
    else
      out.push_back(each);
  }
  return out;
}

}  // namespace wm::match
