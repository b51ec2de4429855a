#include "core/sheet/agreed.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace wm {

namespace {

constexpr std::size_t categories = 3;

/// What each assessor gave one thing, as categories from 0 on.
using Thing = std::vector<std::size_t>;

/// Nothing where one of them left the line out.
std::optional<Thing> thing(const MarkedTwice& performance, std::size_t line) {
  Thing given;
  for (const std::vector<Mark>& marks : performance.by) {
    if (line >= marks.size() || marks[line] == Mark::none) return std::nullopt;
    given.push_back(static_cast<std::size_t>(marks[line]) - 1);
  }
  return given;
}

tl::expected<stats::Kappa, stats::NoKappa> kappa_of_two(const std::vector<Thing>& things) {
  std::vector<std::size_t> first, second;
  for (const Thing& each : things) {
    first.push_back(each[0]);
    second.push_back(each[1]);
  }
  return stats::cohens_kappa(stats::cross_table(first, second, categories),
                             stats::linear_weights(categories));
}

tl::expected<stats::Kappa, stats::NoKappa> kappa_of_more(const std::vector<Thing>& things) {
  stats::RatingCounts counts;
  for (const Thing& each : things) {
    std::vector<long>& row = counts.emplace_back(categories, 0);
    for (const std::size_t category : each) ++row[category];
  }
  return stats::fleiss_kappa(counts).map([](const stats::FleissKappa& all) { return all.all; });
}

Agreed agreed(const std::vector<Thing>& things) {
  Agreed out;
  out.things = things.size();
  out.alike = static_cast<std::size_t>(std::ranges::count_if(
      things, [](const Thing& each) { return std::ranges::count(each, each[0]) == std::ssize(each); }));
  if (things.empty()) return out;
  out.kappa = things[0].size() == 2 ? kappa_of_two(things) : kappa_of_more(things);
  return out;
}

bool worse(const LineAgreed& a, const LineAgreed& b) {
  const std::size_t left = a.agreed.alike * b.agreed.things, right = b.agreed.alike * a.agreed.things;
  if (left != right) return left < right;
  const auto kappa = [](const LineAgreed& of) { return of.agreed.kappa ? of.agreed.kappa->kappa : 1; };
  return std::tuple(kappa(a), a.line) < std::tuple(kappa(b), b.line);
}

SheetAgreed sheet_agreed(const std::vector<const MarkedTwice*>& performances) {
  const MarkedTwice& one = *performances.front();
  SheetAgreed out{one.sheet, one.revision, one.by.size(), performances.size(), {}, {}};
  std::vector<Thing> all;
  for (std::size_t line = 0; line < one.by.front().size(); ++line) {
    std::vector<Thing> things;
    for (const MarkedTwice* performance : performances)
      if (auto given = thing(*performance, line)) things.push_back(std::move(*given));
    if (things.empty()) continue;
    out.lines.push_back({line, agreed(things), line < one.words.size() ? one.words[line] : std::string()});
    all.insert(all.end(), things.begin(), things.end());
  }
  out.all = agreed(all);
  std::ranges::sort(out.lines, worse);
  return out;
}

}  // namespace

std::vector<SheetAgreed> sheets_agreed(std::span<const MarkedTwice> performances) {
  std::map<std::tuple<std::string, int, std::size_t>, std::vector<const MarkedTwice*>> by_sheet;
  for (const MarkedTwice& each : performances)
    if (each.by.size() > 1) by_sheet[{each.sheet, -each.revision, each.by.size()}].push_back(&each);
  std::vector<SheetAgreed> out;
  for (const auto& [key, all] : by_sheet) out.push_back(sheet_agreed(all));
  return out;
}

}  // namespace wm
