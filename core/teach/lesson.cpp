#include "core/teach/lesson.h"

#include <algorithm>

namespace wm::teach {
namespace {

/// Each line of a page, and whether it stands in fenced code (the fences too).
class Lines {
 public:
  explicit Lines(std::string_view text) : left_(text) {}

  bool next() {
    if (left_.empty()) return false;
    const std::size_t end = std::min(left_.find('\n'), left_.size() - 1);
    line_ = left_.substr(0, end + 1);
    left_.remove_prefix(end + 1);
    ++number_;
    const bool fence = line_.starts_with("```") || line_.starts_with("~~~");
    code_ = fence || inside_;
    if (fence) inside_ = !inside_;
    return true;
  }
  std::string_view line() const { return line_; }
  std::size_t number() const { return number_; }
  bool code() const { return code_; }

 private:
  std::string_view left_, line_;
  std::size_t number_ = 0;
  bool inside_ = false, code_ = false;
};

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  if (first == text.npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") + 1 - first);
}

/// The words of a heading of that level; empty where the line is none.
std::string_view heading(std::string_view line, std::string_view marks) {
  return line.starts_with(marks) ? trimmed(line.substr(marks.size())) : std::string_view();
}

bool ends_with_any(std::string name, std::initializer_list<std::string_view> ends) {
  std::transform(name.begin(), name.end(), name.begin(),
                 [](unsigned char c) { return static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c); });
  return std::any_of(ends.begin(), ends.end(), [&](std::string_view end) { return name.ends_with(end); });
}

/// Where `code` in a line ends, from its first backtick on.
std::size_t after_code(std::string_view line, std::size_t at) {
  const std::size_t close = line.find('`', at + 1);
  return close == line.npos ? line.size() : close + 1;
}

/// What stands between "](" and ")": the name, without a title after it.
std::string_view destination(std::string_view line, std::size_t at) {
  const std::size_t close = line.find(')', at);
  if (close == line.npos) return {};
  const std::string_view inside = trimmed(line.substr(at, close - at));
  return inside.substr(0, std::min(inside.find(' '), inside.size()));
}

void take_line(std::vector<Shown>& out, std::string_view line, std::size_t number) {
  bool picture = false;
  for (std::size_t i = 0; i < line.size();) {
    if (line[i] == '`') {
      i = after_code(line, i);
      continue;
    }
    if (line[i] == '[') picture = i > 0 && line[i - 1] == '!';
    if (line.substr(i, 2) == "](") {
      const std::string_view name = destination(line, i + 2);
      if (!name.empty())
        out.push_back({picture ? ShownKind::picture : kind_of(name), std::string(name), number});
    }
    ++i;
  }
}

}  // namespace

std::vector<LessonPart> parts_of(std::string_view markdown) {
  std::vector<LessonPart> parts(1);
  for (Lines lines(markdown); lines.next();) {
    const std::string_view begins = lines.code() ? "" : heading(lines.line(), "## ");
    if (!begins.empty()) parts.push_back({std::string(begins), {}});
    const std::string_view title = lines.code() ? "" : heading(lines.line(), "# ");
    if (parts.size() == 1 && parts.front().heading.empty()) parts.front().heading = title;
    parts.back().text += lines.line();
  }
  if (trimmed(parts.front().text).empty()) parts.erase(parts.begin());
  return parts;
}

ShownKind kind_of(std::string_view name) {
  if (name.starts_with("http://") || name.starts_with("https://")) return ShownKind::web;
  if (name.find(':') != name.npos || name.find('/') != name.npos || name.find('\\') != name.npos)
    return ShownKind::other;
  if (ends_with_any(std::string(name), {".pdf"})) return ShownKind::pdf;
  if (ends_with_any(std::string(name), {".mp4", ".webm", ".ogv", ".mkv", ".mov"})) return ShownKind::video;
  return ends_with_any(std::string(name), {".png", ".jpg", ".jpeg", ".svg"}) ? ShownKind::picture
                                                                             : ShownKind::other;
}

std::vector<Shown> shown_in(std::string_view markdown) {
  std::vector<Shown> out;
  for (Lines lines(markdown); lines.next();)
    if (!lines.code()) take_line(out, lines.line(), lines.number());
  return out;
}

}  // namespace wm::teach
