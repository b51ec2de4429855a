#pragma once
// Run sheets: what is witnessed at a machine, line by line, in the order of the work.
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/sheet/measure.h"
#include "core/sheet/opening.h"

namespace wm {

struct SheetLine {
  std::string text;
  std::string says;       // what is said meanwhile; may be empty
  bool critical = false;  // must be shown unasked before a pass
  std::optional<Measure> measure = {};
  std::optional<SheetOpening> opens = {};  // which of the lines with which every sheet opens it is
  friend bool operator==(const SheetLine&, const SheetLine&) = default;
};

struct SheetSection {
  std::string name;  // the word on the bracket
  std::vector<SheetLine> lines;
  friend bool operator==(const SheetSection&, const SheetSection&) = default;
};

/// Lines are numbered through all sections, from 0 on; people read them from 1 on.
struct Sheet {
  std::string name;
  int revision = 1;
  std::string machine_class;
  std::string checkout;  // the name that gates ask for
  std::string title;     // may be empty
  std::vector<SheetSection> sections;
  friend bool operator==(const Sheet&, const Sheet&) = default;
};

std::size_t line_count(const Sheet& sheet);
/// All lines in order; valid as long as the sheet is.
std::vector<const SheetLine*> lines_of(const Sheet& sheet);

}  // namespace wm
