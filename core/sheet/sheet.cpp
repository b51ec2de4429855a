#include "core/sheet/sheet.h"

namespace wm {

std::size_t line_count(const Sheet& sheet) {
  std::size_t count = 0;
  for (const SheetSection& section : sheet.sections) count += section.lines.size();
  return count;
}

std::vector<const SheetLine*> lines_of(const Sheet& sheet) {
  std::vector<const SheetLine*> lines;
  for (const SheetSection& section : sheet.sections)
    for (const SheetLine& line : section.lines) lines.push_back(&line);
  return lines;
}

}  // namespace wm
