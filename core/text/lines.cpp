#include "core/text/lines.h"

#include <algorithm>

#include "core/text/utf8.h"

namespace wm::text {
namespace {

constexpr std::size_t most_mistakes = 1000, longest_line = 8000;

bool can_be_shown(const Line& line, Mistakes& mistakes) {
  if (line.text.size() > longest_line) {
    mistakes.add(line.number, "This line has more than 8,000 bytes.", "Break it; an indented line goes on.");
    return false;
  }
  const Flaw flaw = flaw_in(line.text);
  if (flaw == Flaw::none) return true;
  if (flaw == Flaw::not_utf8)
    mistakes.add(line.number, "Some of this line is not UTF-8.", "Save the file as UTF-8.");
  else
    mistakes.add(line.number, "There is a character here that can't be shown.", "Take it out.");
  return false;
}

std::string_view without_end(std::string_view line) {
  return line.substr(0, line.find_last_not_of(" \t\r") + 1);  // 0 where there is nothing else
}

}  // namespace

void Mistakes::add(std::size_t line, std::string what, std::string remedy) {
  if (found_.size() == most_mistakes) {
    ++more_;
    return;
  }
  found_.push_back({line, std::move(what), std::move(remedy)});
}

std::vector<Problem> Mistakes::in_order() && {
  std::stable_sort(found_.begin(), found_.end(),
                   [](const Found& a, const Found& b) { return a.line < b.line; });
  std::vector<Problem> problems;
  for (Found& f : found_)
    problems.push_back({"line " + std::to_string(f.line), std::move(f.what), std::move(f.remedy)});
  if (more_ > 0)
    problems.push_back({"", "There are " + std::to_string(more_) + " more mistakes.",
                        "Correct those before this one, then read the file again."});
  return problems;
}

std::vector<Line> lines_of(std::string_view text, Mistakes& mistakes) {
  std::vector<Line> lines;
  for (std::size_t number = 1; !text.empty(); ++number) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const Line line{number, without_end(text.substr(0, end))};
    text.remove_prefix(std::min(end + 1, text.size()));
    if (line.text.empty() || line.text.front() == '#') continue;
    if (can_be_shown(line, mistakes)) lines.push_back(line);
  }
  return lines;
}

std::string plain_words(std::string_view text) {
  std::string words;
  for (;;) {
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    if (begin == std::string_view::npos) return words;
    text.remove_prefix(begin);
    const std::size_t end = std::min(text.find_first_of(" \t\r\n"), text.size());
    words.append(words.empty() ? "" : " ").append(text.substr(0, end));
    text.remove_prefix(end);
  }
}

std::string quoted(std::string_view text) {
  constexpr std::size_t longest = 60;
  if (text.size() <= longest) return "\"" + std::string(text) + "\"";
  std::size_t end = longest;
  while (goes_on(text[end])) --end;
  return "\"" + std::string(text.substr(0, end)) + "…\"";
}

}  // namespace wm::text
