#include "db/import/table.h"

#include <csv.h>

#include <algorithm>
#include <array>

#include "db/import/decode.h"

namespace wm::db::import {
namespace {

constexpr std::size_t largest_file = 64u << 20;
// A file of 64 MiB could otherwise fill the memory with rows of one byte, or with cells of none. Spreadsheets
// have as many columns.
constexpr std::size_t most_lines = 1'000'000, most_columns = 16'384, most_cells = 10'000'000;
constexpr std::size_t lines_to_guess_by = 50;

std::string at_line(int line) { return "line " + std::to_string(line); }

/// libcsv's parser as a scope. Its rows are taken out by `take_row`.
class Parser {
 public:
  explicit Parser(char separator) : separator_(separator) { start(); }
  ~Parser() { csv_free(&parser_); }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;

  /// Forgets a row begun.
  void restart() {
    csv_free(&parser_);
    start();
  }
  /// False where the text breaks the rules.
  bool feed(std::string_view text) {
    return csv_parse(&parser_, text.data(), text.size(), on_cell, on_row, this) == text.size();
  }
  /// False where a quotation mark is still open.
  bool finish() { return csv_fini(&parser_, on_cell, on_row, this) == 0; }

  bool row_done() const { return done_; }
  std::vector<std::string> take_row() {
    done_ = false;
    return std::exchange(cells_, {});
  }

 private:
  void start() {
    csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI);
    csv_set_delim(&parser_, static_cast<unsigned char>(separator_));
    // Spaces are part of a field (RFC 4180, section 2, rule 4); libcsv would strip them.
    csv_set_space_func(&parser_, [](unsigned char) { return 0; });
    cells_.clear();
    done_ = false;
  }
  /// Of cells beyond the last column one is kept, with text in it if one of them has any.
  static void on_cell(void* text, std::size_t size, void* self) {
    auto& cells = static_cast<Parser*>(self)->cells_;
    const std::string_view cell(static_cast<const char*>(text), size);
    if (cells.size() <= most_columns)
      cells.emplace_back(cell);
    else if (!cell.empty())
      cells.back() = cell;
  }
  static void on_row(int, void* self) { static_cast<Parser*>(self)->done_ = true; }

  csv_parser parser_{};
  char separator_;
  std::vector<std::string> cells_;
  bool done_ = false;
};

struct Parsed {
  std::vector<Row> rows;
  std::vector<RowProblem> problems;
  std::size_t cells = 0;
};

bool is_blank_line(std::string_view line) { return line.find_first_not_of("\r\n") == line.npos; }

bool is_blank(const Row& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](const std::string& cell) { return cell.find_first_not_of(" \t") == cell.npos; });
}

RowProblem stray_quote(int first, int last) {
  std::string what = "has a quotation mark inside a cell";
  if (last != first) what += " (the cell runs on to " + at_line(last) + ")";
  return {first,
          {at_line(first), what,
           "Put the whole cell between quotation marks, and write each one inside it twice"}};
}

RowProblem open_quote(int line) {
  return {line,
          {at_line(line), "opens a quotation mark that is never closed; the rows after it could not be read",
           "Close it at the end of the cell, or take it away"}};
}

/// Feeds line by line, so that each row knows the line on which it begins, and a row that breaks the rules
/// costs only itself: reading goes on with the line after the one on which it began.
Parsed parse(const std::vector<std::string_view>& lines, char separator) {
  Parsed parsed;
  Parser parser(separator);
  std::optional<std::size_t> begun;  // the line on which the row being read began
  const auto take = [&] {
    parsed.rows.push_back({static_cast<int>(*begun) + 1, parser.take_row()});
    parsed.cells += parsed.rows.back().cells.size();
  };
  for (std::size_t i = 0; i < lines.size() && parsed.cells <= most_cells; ++i) {
    if (!begun && is_blank_line(lines[i])) continue;
    if (!begun) begun = i;
    if (!parser.feed(lines[i])) {
      parsed.problems.push_back(stray_quote(static_cast<int>(*begun) + 1, static_cast<int>(i) + 1));
      parser.restart();
      i = *begun;
      begun.reset();
    } else if (parser.row_done()) {
      take();
      begun.reset();
    }
  }
  if (!parser.finish())
    parsed.problems.push_back(open_quote(static_cast<int>(*begun) + 1));
  else if (parser.row_done())
    take();
  return parsed;
}

/// The separator by which most of the first rows are as wide as the header, and wider than one cell.
char guess_separator(const std::vector<std::string_view>& lines) {
  const std::vector<std::string_view> some(lines.begin(),
                                           lines.begin() + std::min(lines.size(), lines_to_guess_by));
  char best = ',';
  std::pair<std::ptrdiff_t, std::size_t> best_score{0, 1};
  for (const char separator : {',', ';', '\t'}) {
    const std::vector<Row> rows = parse(some, separator).rows;
    const std::size_t width = rows.empty() ? 0 : rows.front().cells.size();
    if (width < 2) continue;
    const auto alike =
        std::count_if(rows.begin(), rows.end(), [&](const Row& r) { return r.cells.size() == width; });
    if (std::pair(alike, width) > best_score) {
      best = separator;
      best_score = {alike, width};
    }
  }
  return best;
}

/// Cells beyond the header's last are dropped where there is nothing in them.
bool fit(Row& row, std::size_t width) {
  while (row.cells.size() > width && row.cells.back().empty()) row.cells.pop_back();
  return row.cells.size() == width;
}

RowProblem wrong_width(const Row& row, std::size_t width) {
  return {row.line,
          {at_line(row.line),
           "has " + (row.cells.size() > most_columns ? "more than 16384" : std::to_string(row.cells.size())) +
               " cells where the first row has " + std::to_string(width),
           "Give every row the same cells, with nothing between two separators where a cell is empty"}};
}

tl::unexpected<Problem> too_much(const char* what) {
  return tl::unexpected(Problem{"file", what, "Split it into smaller files"});
}

Expected<void> check_is_text(std::string_view bytes) {
  if (bytes.size() > largest_file) return too_much("is larger than 64 MiB");
  const std::string_view start = bytes.substr(0, 2);
  if (start == "\xFF\xFE" || start == "\xFE\xFF")
    return tl::unexpected(Problem{"file", "is written in UTF-16", "Save it again as CSV UTF-8"});
  if (bytes.find('\0') != bytes.npos)
    return tl::unexpected(
        Problem{"file", "is not a text file", "Save the table as CSV and choose that file"});
  return {};
}

}  // namespace

Expected<Table> read_table(std::string_view bytes, const ReadOptions& options) {
  if (const auto text = check_is_text(bytes); !text) return tl::unexpected(text.error());
  Decoded decoded = decode(bytes, options.encoding);
  const std::vector<std::string_view> lines = split_lines(decoded.text);
  if (lines.size() > most_lines) return too_much("has more than a million lines");
  Table table{decoded.encoding,
              decoded.guessed,
              options.separator.value_or(guess_separator(lines)),
              !options.separator,
              {},
              {},
              std::move(decoded.problems)};
  Parsed parsed = parse(lines, table.separator);
  if (parsed.cells > most_cells) return too_much("has more than ten million cells");
  std::erase_if(parsed.rows, is_blank);
  if (parsed.rows.empty() && parsed.problems.empty())
    return tl::unexpected(Problem{"file", "has no rows", "Choose a file whose first row names its columns"});
  table.problems.insert(table.problems.end(), parsed.problems.begin(), parsed.problems.end());
  if (!parsed.rows.empty()) table.header = std::move(parsed.rows.front().cells);
  if (table.header.size() > most_columns)
    return tl::unexpected(Problem{"file", "has more than 16384 columns",
                                  "Choose a file whose first row names its columns, each once"});
  for (std::size_t i = 1; i < parsed.rows.size(); ++i) {
    Row& row = parsed.rows[i];
    if (fit(row, table.header.size()))
      table.rows.push_back(std::move(row));
    else
      table.problems.push_back(wrong_width(row, table.header.size()));
  }
  std::stable_sort(table.problems.begin(), table.problems.end(),
                   [](const RowProblem& a, const RowProblem& b) { return a.line < b.line; });
  return table;
}

}  // namespace wm::db::import
