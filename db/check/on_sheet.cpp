// What is signed, held against the run sheet that was issued for it.
#include <algorithm>

#include "core/sheet/typed.h"
#include "db/check/checks.h"

namespace wm::db {
namespace {

/// Sheets that were issued for that revision of the check-out, and for the unit's class where one is named.
std::vector<const Sheet*> issued_for(const Case& c, const Checkout& checkout,
                                     const std::string& machine_class) {
  std::vector<const Sheet*> found;
  for (const std::size_t i : c.memory.of_kind("issued")) {
    const auto* issued = as<Issued>(c.memory.entries()[i].fact);
    if (issued->work != Work::sheet || issued->revision != checkout.revision) continue;
    const Sheet* sheet = c.memory.sheet(issued->name, issued->revision);
    if (sheet != nullptr && sheet->checkout == checkout.checkout &&
        (machine_class.empty() || sheet->machine_class == machine_class))
      found.push_back(sheet);
  }
  return found;
}

std::string revision_words(const std::string& name, int revision) {
  return "revision " + std::to_string(revision) + " of the run sheet '" + name + "'";
}

Expected<void> check_lines(const Sheet& sheet, const SignCheckout& s) {
  const auto lines = lines_of(sheet);
  if (std::max(s.marks.size(), s.again.size()) > lines.size())
    return refuse("marks",
                  revision_words(sheet.name, sheet.revision) + " has " + std::to_string(lines.size()) +
                      " lines, and more are marked.",
                  "Mark that sheet, line by line.");
  for (const LineMeasured& one : s.measured) {
    const auto at = static_cast<std::size_t>(one.line) - 1;  // one of those marked: see check_measured
    if (!lines[at]->measure)
      return refuse("measured, line " + std::to_string(one.line), "Nothing is measured on this line.",
                    "Leave it out.");
    if (const auto read = measured_of(*lines[at]->measure, one); !read)
      return tl::make_unexpected(read.error());
  }
  return {};
}

/// "line 3", "lines 3, 4".
std::string numbers(const std::vector<std::size_t>& lines) {
  std::string out = lines.size() == 1 ? "line " : "lines ";
  for (std::size_t i = 0; i < lines.size(); ++i) out += (i == 0 ? "" : ", ") + std::to_string(lines[i] + 1);
  return out;
}

std::string why(const SheetResult& result) {
  if (!result.critical_missed.empty()) return "critical and not shown: " + numbers(result.critical_missed);
  std::string out;
  const auto add = [&out](const char* what, const std::vector<std::size_t>& lines) {
    if (!lines.empty()) out += (out.empty() ? "" : "; ") + std::string(what) + numbers(lines);
  };
  add("without a mark: ", result.unmarked);
  add("not measured: ", result.to_measure);
  add("to be shown again unasked: ", result.show_again);
  return out;
}

Expected<void> check_outcome(const Sheet& sheet, const SignCheckout& s) {
  const SheetResult result = result_of(sheet, s.marks, s.again, by_line(sheet, s.measured));
  if (may_sign(result, s.checkout.outcome)) return {};
  return refuse(
      "outcome",
      "The marks do not come to '" + std::string(word(s.checkout.outcome)) + "'; " + why(result) + ".",
      result.suggested == Suggested::failed ? "Sign it as failed, or mend a mark that is wrong."
                                            : "Finish the sheet, or sign it as failed or stopped.");
}

}  // namespace

Expected<void> check_on_sheet(const Case& c, const SignCheckout& s) {
  const std::string machine_class = s.machine.empty() ? "" : c.memory.class_of_machine(s.machine);
  const auto sheets = issued_for(c, s.checkout, machine_class);
  const auto marked = std::ranges::find_if(sheets, [&](const Sheet* sheet) {
    return sheet->name == s.sheet && sheet->revision == s.sheet_revision;
  });
  if (marked != sheets.end())
    return check_lines(**marked, s).and_then([&] { return check_outcome(**marked, s); });
  if (!sheets.empty())
    return refuse("sheet",
                  "The check-out '" + s.checkout.checkout + "' in its revision " +
                      std::to_string(s.checkout.revision) + " is shown on " +
                      revision_words(sheets.front()->name, sheets.front()->revision) + ".",
                  "Mark that sheet, line by line.");
  if (const Sheet* other = c.memory.sheet(s.sheet, s.sheet_revision))
    return refuse("sheet",
                  "On " + revision_words(other->name, other->revision) + " the check-out '" +
                      other->checkout + "' of the class '" + other->machine_class +
                      "' is shown in that revision, which is another.",
                  "Mark the sheet of this machine.");
  return {};
}

}  // namespace wm::db
