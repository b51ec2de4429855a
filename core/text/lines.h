#pragma once
// A text file as lines that can be shown, and the mistakes found in it.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"

namespace wm::text {

/// `number` counts from 1. `text` has no line end and no blanks at its end.
struct Line {
  std::size_t number = 0;
  std::string_view text;
  bool indented() const { return text.starts_with(' ') || text.starts_with('\t'); }
};

/// What is wrong with a file. The first thousand are kept, the others counted.
class Mistakes {
 public:
  void add(std::size_t line, std::string what, std::string remedy);
  bool none() const { return found_.empty(); }
  /// In order of the file; a last one says how many were not kept.
  std::vector<Problem> in_order() &&;

 private:
  struct Found {
    std::size_t line;
    std::string what, remedy;
  };
  std::vector<Found> found_;
  std::size_t more_ = 0;
};

/// The lines that say something: without comments (#), empty ones, and those that can't be shown, which are
/// mistakes: broken UTF-8, control characters, more than 8,000 bytes. Valid as long as the text is.
std::vector<Line> lines_of(std::string_view text, Mistakes& mistakes);

/// The words with one blank between them.
std::string plain_words(std::string_view text);
/// As a short piece of a sentence, in quotes.
std::string quoted(std::string_view text);

}  // namespace wm::text
