#pragma once
// Bytes of unknown origin as UTF-8.
#include <string>
#include <string_view>
#include <vector>

#include "db/import/table.h"

namespace wm::db::import {

struct Decoded {
  std::string text;  // UTF-8 without a byte order mark
  Encoding encoding = Encoding::utf8;
  bool guessed = true;
  std::vector<RowProblem> problems;  // lines with bytes that the encoding does not have
};

/// By `chosen`, or else by a guess: a byte order mark or valid UTF-8 is UTF-8, all else Windows-1252, whose
/// every sentence with an accent in it is invalid UTF-8.
Decoded decode(std::string_view bytes, std::optional<Encoding> chosen);

/// The lines of a text, each with its line end (LF, CR LF or CR).
std::vector<std::string_view> split_lines(std::string_view text);

}  // namespace wm::db::import
