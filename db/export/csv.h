#pragma once
// Tables as comma-separated values (RFC 4180), for spreadsheets and for statistics.
#include <string>
#include <string_view>
#include <vector>

namespace wm::db {

/// One line with its end (CR LF): cells with commas, quotation marks or line breaks in them are put in
/// quotation marks.
std::string csv_line(const std::vector<std::string>& cells);

/// Words that a spreadsheet would take for a formula, since they begin with =, +, -, @ or a control
/// character, with an apostrophe before them, as spreadsheets mark text. For what somebody typed; never for
/// numbers.
std::string as_text(std::string_view words);

}  // namespace wm::db
