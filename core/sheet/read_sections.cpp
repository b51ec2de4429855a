// The sections of a run sheet's text, and the lines in them, each with what stands below it.
#include <algorithm>
#include <set>

#include "core/sheet/reading.h"
#include "core/sheet/sheet_text.h"

namespace wm::sheet_text {
namespace {

constexpr std::size_t longest_words = 1000, longest_name = 200;

/// The mark at a line's beginning, or 0.
char mark_of(std::string_view line) {
  const bool apart = line.size() == 1 || (line.size() > 1 && (line[1] == ' ' || line[1] == '\t'));
  return apart && (line[0] == '*' || line[0] == '-' || line[0] == '>') ? line[0] : '\0';
}

bool has_key(std::string_view line) {
  const std::size_t colon = line.find(':');
  return colon != std::string_view::npos &&
         std::ranges::find(line_keys(), plain_words(line.substr(0, colon))) != line_keys().end();
}

/// Takes one line after another; `onto_` is what an indented one goes on with.
class Sections {
 public:
  explicit Sections(Mistakes& mistakes) : mistakes_(mistakes) {}

  void take(const Line& line) {
    if (line.indented()) return go_on(line);
    if (begins_section(line)) return begin(line);
    const char mark = mark_of(line.text);
    if (mark == '>') return says(line);
    if (mark != '\0') return add(line, mark == '*');
    setting(line);
  }
  std::vector<RawSection> done() && {
    for (const RawSection& section : all_)
      if (section.lines.empty())
        mistakes_.add(section.number, "There is no line in this section.",
                      "Write one below it, after * (critical) or -, or take the section out.");
    return std::move(all_);
  }

 private:
  RawLine* current() { return all_.back().lines.empty() ? nullptr : &all_.back().lines.back(); }

  void begin(const Line& line) {
    onto_ = nullptr;
    const bool closed = line.text.size() > 1 && line.text.ends_with(']');
    RawSection section{line.number, closed ? plain_words(line.text.substr(1, line.text.size() - 2)) : "", {}};
    if (!closed)
      mistakes_.add(line.number, "This section's word is not closed.", "Write it in brackets: [before].");
    else if (section.name.empty())
      mistakes_.add(line.number, "This section has no word.", "Write one in the brackets: [before].");
    else if (section.name.size() > longest_name)
      mistakes_.add(line.number, "This word has more than 200 bytes.", "Write a shorter one.");
    else if (!names_.insert(section.name).second)
      mistakes_.add(line.number, "Another section has this word.", "Give each section its own.");
    all_.push_back(std::move(section));
  }
  void add(const Line& line, bool critical) {
    if (++count_ == most_sheet_lines + 1)
      mistakes_.add(line.number, "The sheet has more than 999 lines.", "Make two sheets of it.");
    all_.back().lines.push_back({line.number, critical, {}, {}, {}});
    begin_words(line, current()->text);
  }
  void says(const Line& line) {
    onto_ = nullptr;
    if (current() == nullptr)
      mistakes_.add(line.number, "What is said here belongs to no line.",
                    "Write the line first, after * (critical) or -.");
    else if (!current()->says.empty())
      mistakes_.add(line.number, "What is said meanwhile stands here for the second time.",
                    "Write it as one; an indented line goes on.");
    else
      begin_words(line, current()->says);
  }
  void begin_words(const Line& line, std::string& words) {
    onto_ = &words;
    if (plain_words(line.text.substr(1)).empty())
      mistakes_.add(line.number, "Nothing stands after the mark.", "Write what it is, or take the line out.");
    append(line, line.text.substr(1));
  }
  void go_on(const Line& line) {
    std::string_view words = line.text.substr(line.text.find_first_not_of(" \t"));
    if (onto_ == nullptr)
      return mistakes_.add(line.number, "This line goes on with nothing.", "Take the blanks before it out.");
    if (words.starts_with('\\'))
      words.remove_prefix(1);
    else if (words.starts_with('[') || mark_of(words) != '\0' || has_key(words))
      mistakes_.add(line.number, "This line goes on with the one above, but begins like one of its own.",
                    "Take the blanks before it out, or write \\ before its first word.");
    append(line, words);
  }
  void setting(const Line& line) {
    onto_ = nullptr;
    if (!has_key(line.text))
      return mistakes_.add(line.number, "This line has no mark.",
                           "Begin it with *, - or >, or indent it to go on.");
    if (current() == nullptr)
      return mistakes_.add(line.number, "This belongs to no line.",
                           "Write the line first, after * (critical) or -.");
    current()->settings.push_back(line);
  }
  void append(const Line& line, std::string_view more) {
    const std::string words = plain_words(more);
    const bool apart = !onto_->empty() && !words.empty();
    if (onto_->size() + (apart ? 1 : 0) + words.size() > longest_words)
      return mistakes_.add(line.number, "This has more than 1,000 bytes.", "Say it in fewer words.");
    if (apart) *onto_ += ' ';
    *onto_ += words;
  }

  Mistakes& mistakes_;
  std::vector<RawSection> all_;
  std::set<std::string> names_;
  std::size_t count_ = 0;
  std::string* onto_ = nullptr;  // of the last line: never kept when another is added
};

}  // namespace

std::vector<RawSection> read_sections(std::span<const Line> lines, Mistakes& mistakes) {
  Sections sections(mistakes);
  for (const Line& line : lines) sections.take(line);
  return std::move(sections).done();
}

}  // namespace wm::sheet_text
