#include "db/export/csv.h"

#include <csv.h>

namespace wm::db {
namespace {

std::string csv_cell(const std::string& cell) {
  if (cell.find_first_of(",\"\r\n") == std::string::npos) return cell;
  std::string quoted(2 * cell.size() + 2, '\0');
  quoted.resize(csv_write(quoted.data(), quoted.size(), cell.data(), cell.size()));
  return quoted;
}

}  // namespace

std::string csv_line(const std::vector<std::string>& cells) {
  std::string line;
  for (const std::string& cell : cells) {
    if (&cell != &cells.front()) line += ',';
    line += csv_cell(cell);
  }
  return line + "\r\n";
}

std::string as_text(std::string_view words) {
  const bool formula =
      !words.empty() && std::string_view("=+-@\t\r\n").find(words.front()) != std::string_view::npos;
  return (formula ? "'" : "") + std::string(words);
}

}  // namespace wm::db
