#pragma once
// What was measured at one line of a run sheet, as it is kept.
#include <string>

namespace wm {

/// `typed`: word for word ("25,2"). `read`: as it was understood, with its unit ("25.2 mm", "90 deg").
/// `marks`: how far those of the instrument are apart, in the same way.
struct LineMeasured {
  int line = 1;  // as the sheet numbers its lines: from 1 on
  std::string typed, read, marks;
  friend bool operator==(const LineMeasured&, const LineMeasured&) = default;
};

}  // namespace wm
