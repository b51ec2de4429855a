#include "core/diary/intervals.h"

#include <algorithm>

namespace wm {

std::vector<Interval> joined(std::vector<Interval> any) {
  std::erase_if(any, [](const Interval& each) { return each.to <= each.from; });
  std::sort(any.begin(), any.end(), [](const Interval& a, const Interval& b) { return a.from < b.from; });
  std::vector<Interval> out;
  for (const Interval& each : any) {
    if (!out.empty() && each.from <= out.back().to)
      out.back().to = std::max(out.back().to, each.to);
    else
      out.push_back(each);
  }
  return out;
}

std::vector<Interval> common(const std::vector<Interval>& a, const std::vector<Interval>& b) {
  std::vector<Interval> out;
  for (auto i = a.begin(), j = b.begin(); i != a.end() && j != b.end(); (i->to < j->to ? i : j)++)
    if (overlap(*i, *j)) out.push_back({std::max(i->from, j->from), std::min(i->to, j->to)});
  return out;
}

std::vector<Interval> without(const std::vector<Interval>& a, const std::vector<Interval>& b) {
  std::vector<Interval> out;
  auto j = b.begin();
  for (Interval left : a) {
    while (j != b.end() && j->to <= left.from) ++j;
    // What reaches beyond this one may reach into the next.
    for (auto cut = j; cut != b.end() && cut->from < left.to; ++cut) {
      if (left.from < cut->from) out.push_back({left.from, cut->from});
      left.from = std::max(left.from, cut->to);
    }
    if (left.from < left.to) out.push_back(left);
  }
  return out;
}

}  // namespace wm
