#pragma once
// What an assessor has put on a run sheet, by line.
#include <QString>
#include <vector>

#include "core/sheet/mark.h"

namespace wm::app {

/// What stands in the two fields of a line that measures, as it was typed: what was read, and the
/// instrument's marks where they are not those that the line names.
struct TypedMeasure {
  QString measure, instrument;
  friend bool operator==(const TypedMeasure&, const TypedMeasure&) = default;
};

struct OnSheet {
  std::vector<Mark> marks, again;
  std::vector<TypedMeasure> typed;
  friend bool operator==(const OnSheet&, const OnSheet&) = default;
};

}  // namespace wm::app
