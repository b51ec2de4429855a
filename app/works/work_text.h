#pragma once
// The text of a work that is being edited: its lines, and what stands in the way of issuing it.
#include <QString>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "core/problem.h"

namespace wm::app {

struct WorkProblem {
  int line = 1;  // from 1
  QString what, remedy;
};

/// What a reader found, at the line that it named.
WorkProblem work_problem(const Problem& problem);
/// The first line that `wanted` says yes to, from 1; 1 where there is none.
int first_line(const std::string& text, const std::function<bool(const std::string&)>& wanted);
/// What stands behind a line's key, without blanks.
std::string trimmed_after(const std::string& line, std::string_view key);

/// The line of a work's own revision, which is looked for above the first line that begins with `below`.
int line_of_revision(const std::string& text);
/// Where the text's revision, of a name of which `highest` was issued, can't be issued any more.
std::optional<WorkProblem> issued_already(const std::string& text, int revision, int highest);
/// The text with that revision set to another.
std::string with_revision(const std::string& text, int revision, std::string_view below);

}  // namespace wm::app
