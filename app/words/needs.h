#pragma once
// Requirements as lines: what is asked, and below it what is there or missing.
#include <QString>
#include <vector>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// One line for a requirement: what it is, and the quiet line under it.
struct NeedLine {
  bool holds = false;
  QString what;
  QString detail;
  int depth = 0;
};

/// A gate as lines, the parts of any_of and the like indented below it. What still counts though it is due,
/// or for those who were here before, holds and says so.
std::vector<NeedLine> need_lines(const GateAnswer& gate, const AnswerReader& reader);

}  // namespace wm::app
