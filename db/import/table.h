#pragma once
// A CSV file as rows of text: what any spreadsheet writes, read strictly by RFC 4180.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"

namespace wm::db::import {

enum class Encoding { utf8, windows_1252 };

/// What the user has chosen; nothing: guess.
struct ReadOptions {
  std::optional<Encoding> encoding;
  std::optional<char> separator;  // ',', ';' or '\t'
};

/// A row with the line of the file on which it begins, counted from 1.
struct Row {
  int line = 0;
  std::vector<std::string> cells;  // UTF-8, exactly as written, spaces included
  friend bool operator==(const Row&, const Row&) = default;
};

/// Something wrong with one row. `problem.where` says "line N".
struct RowProblem {
  int line = 0;
  Problem problem;
  friend bool operator==(const RowProblem&, const RowProblem&) = default;
};

/// What was read, and how. Every row in `rows` has as many cells as `header`; rows that could not be read
/// are in `problems` instead, in order of line. Blank rows are left out.
struct Table {
  Encoding encoding = Encoding::utf8;
  bool encoding_guessed = true;
  char separator = ',';
  bool separator_guessed = true;
  std::vector<std::string> header;
  std::vector<Row> rows;
  std::vector<RowProblem> problems;
};

/// Reads the whole of a file's bytes (at most 64 MiB, a million lines, 16384 columns and ten million cells).
/// A Problem where it is no such file at all: empty, not text, UTF-16.
Expected<Table> read_table(std::string_view bytes, const ReadOptions& options = {});

}  // namespace wm::db::import
