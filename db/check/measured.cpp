// What was measured on a run sheet, as far as it can be told without the sheet.
#include "core/sheet/typed.h"
#include "db/check/checks.h"

namespace wm::db {
namespace {

std::string at_line(const LineMeasured& one) { return "measured, line " + std::to_string(one.line); }

Expected<void> check_one(const LineMeasured& one) {
  if (one.typed.find_first_not_of(" \t\r\n") == std::string::npos)
    return refuse(at_line(one), "Nothing was typed there.", "Leave the line out, or type what was read.");
  if (!is_measured(one))
    return refuse(at_line(one), "'" + one.typed + "' is not '" + one.read + "', read to '" + one.marks + "'.",
                  "Type it as it was read, such as 1 3/8 in, 25.2 mm or 90 deg.");
  return {};
}

}  // namespace

Expected<void> check_measured(const std::vector<LineMeasured>& measured, std::size_t lines) {
  int last = 0;
  for (const LineMeasured& one : measured) {
    if (one.line <= last || static_cast<std::size_t>(one.line) > lines)
      return refuse(at_line(one), "There is no such line among those marked, or it comes twice.",
                    "Name each line once, in their order.");
    if (auto fine = check_one(one); !fine) return fine;
    last = one.line;
  }
  return {};
}

}  // namespace wm::db
