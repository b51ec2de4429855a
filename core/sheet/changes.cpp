#include "core/sheet/changes.h"

#include <map>
#include <optional>
#include <string>

namespace wm {
namespace {

/// A line, and the section that it stands in.
struct Placed {
  const SheetLine* line;
  const std::string* section;
};

std::vector<Placed> placed_lines(const Sheet& sheet) {
  std::vector<Placed> lines;
  for (const SheetSection& section : sheet.sections)
    for (const SheetLine& line : section.lines) lines.push_back({&line, &section.name});
  return lines;
}

}  // namespace

SheetChanges changes(const Sheet& before, const Sheet& after) {
  SheetChanges out;
  out.machine = before.machine_class != after.machine_class || before.checkout != after.checkout;
  const std::vector<Placed> was = placed_lines(before), is = placed_lines(after);
  std::multimap<std::string_view, std::size_t> left;  // of the sheet before, by their words
  for (std::size_t i = 0; i < was.size(); ++i) left.emplace(was[i].line->text, i);
  std::optional<std::size_t> last;
  for (std::size_t i = 0; i < is.size(); ++i) {
    const auto found = left.lower_bound(is[i].line->text);  // of several the first
    if (found == left.end() || found->first != is[i].line->text) {
      out.added.push_back(i);
      continue;
    }
    const Placed& old = was[found->second];
    if (old.line->critical && !is[i].line->critical)
      out.eased.push_back(i);
    else if (*old.line != *is[i].line)
      out.changed.push_back(i);
    out.order = out.order || (last && found->second < *last) || *old.section != *is[i].section;
    last = found->second;
    left.erase(found);
  }
  for (std::size_t i = 0; i < was.size(); ++i)
    for (auto [at, end] = left.equal_range(was[i].line->text); at != end; ++at)
      if (at->second == i) out.removed.push_back(i);
  return out;
}

}  // namespace wm
