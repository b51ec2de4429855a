#include "app/works/work_text.h"

#include <QCoreApplication>
#include <charconv>
#include <sstream>

namespace wm::app {
namespace {

struct WorkText {
  Q_DECLARE_TR_FUNCTIONS(wm::app::WorkText)
};

constexpr std::string_view revision_key = "revision:";

/// "line 12" of a Problem.
int line_in(const std::string& where) {
  int line = 1;
  const std::size_t digits = where.find_first_of("0123456789");
  if (digits != std::string::npos) std::from_chars(where.data() + digits, where.data() + where.size(), line);
  return line;
}

}  // namespace

WorkProblem work_problem(const Problem& problem) {
  return {line_in(problem.where), QString::fromStdString(problem.what),
          QString::fromStdString(problem.remedy)};
}

int first_line(const std::string& text, const std::function<bool(const std::string&)>& wanted) {
  std::istringstream lines(text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    if (wanted(line)) return number;
  }
  return 1;
}

std::string trimmed_after(const std::string& line, std::string_view key) {
  return QString::fromStdString(line.substr(key.size())).trimmed().toStdString();
}

int line_of_revision(const std::string& text) {
  return first_line(text, [](const std::string& line) { return line.starts_with(revision_key); });
}

std::optional<WorkProblem> issued_already(const std::string& text, int revision, int highest) {
  if (revision > highest) return std::nullopt;
  return WorkProblem{line_of_revision(text), WorkText::tr("Revision %1 has been issued already").arg(highest),
                     WorkText::tr("Write a higher one")};
}

std::string with_revision(const std::string& text, int revision, std::string_view below) {
  std::istringstream lines(text);
  std::string changed;
  bool done = false;
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with(below)) done = true;
    if (!done && line.starts_with(revision_key)) {
      line = std::string(revision_key) + " " + std::to_string(revision);
      done = true;
    }
    changed += line + "\n";
  }
  return changed;
}

}  // namespace wm::app
