// What a question says in each language, line by line.
#include <algorithm>

#include "core/teach/reading.h"

namespace wm::teach {
namespace {

constexpr std::size_t longest_text = 4000;

struct Marked {
  std::string mark;  // empty: none
  std::string_view text;
};

/// "* right", "- wrong", "> reason", "2. step".
Marked marked(std::string_view line) {
  const std::size_t blank = std::min(line.find_first_of(" \t"), line.size());
  const std::string_view first = line.substr(0, blank), rest = line.substr(blank);
  if (first == "*" || first == "-" || first == ">") return {std::string(first), rest};
  const bool step = first.size() >= 2 && first.size() <= 3 && first.back() == '.' &&
                    first.find_first_not_of("0123456789") == first.size() - 1;
  if (step) return {std::string(first.substr(0, first.size() - 1)), rest};
  return {"", line};
}

/// Reads the lines of one language after another; `onto_` is what an indented line goes on with.
class Wordings {
 public:
  explicit Wordings(Mistakes& mistakes) : mistakes_(mistakes) {}

  void take(const Line& line) {
    if (is_tag(line)) return begin(line);
    if (line.indented()) return go_on(line);
    if (line.text.starts_with('\\')) return plain(line, line.text.substr(1));
    const Marked read = marked(line.text);
    if (read.mark.empty()) return plain(line, line.text);
    if (read.mark == ">") return reason(line, read.text);
    all_.back().choices.push_back({line.number, read.mark, ""});
    onto_ = Onto::choice;
    append(line, read.text);
  }
  std::vector<RawWording> done() && { return std::move(all_); }

 private:
  enum class Onto { text, choice, reason };

  void begin(const Line& line) {
    all_.push_back({});
    all_.back().line = line.number;
    all_.back().language = std::string(line.text.substr(1, line.text.size() - 2));
    onto_ = Onto::text;
  }
  void go_on(const Line& line) {
    std::string_view text = line.text.substr(line.text.find_first_not_of(" \t"));
    if (text.starts_with('\\'))
      text.remove_prefix(1);
    else if (looks_marked(text))
      mistakes_.add(line.number, "This line goes on with the one above, but begins with a mark.",
                    "Take the blanks before it out, or write \\ before the mark.");
    append(line, text);
  }
  void plain(const Line& line, std::string_view text) {
    if (onto_ != Onto::text)
      mistakes_.add(
          line.number, "This line has no mark.",
          "Begin it with * (right), - (wrong), a step's number or > (reason), or indent it to go on.");
    append(line, text);
  }
  void reason(const Line& line, std::string_view text) {
    onto_ = Onto::reason;
    append(line, text);
  }
  std::string& target() {
    RawWording& wording = all_.back();
    return onto_ == Onto::text     ? wording.text
           : onto_ == Onto::reason ? wording.reason
                                   : wording.choices.back().text;
  }
  void append(const Line& line, std::string_view text) {
    std::string& onto = target();
    const std::string words = plain_words(text);
    if (onto.size() + words.size() >= longest_text)
      return mistakes_.add(line.number, "This has more than 4,000 bytes.", "Say it in fewer words.");
    if (!onto.empty() && !words.empty()) onto += ' ';
    onto += words;
  }

  Mistakes& mistakes_;
  std::vector<RawWording> all_;
  Onto onto_ = Onto::text;
};

}  // namespace

bool is_tag(const Line& line) { return line.text.starts_with('[') && line.text.ends_with(']'); }

bool looks_marked(std::string_view text) {
  return text.starts_with('#') || text.starts_with('\\') || is_tag({0, text}) ||
         text.starts_with(question_key) || !marked(text).mark.empty();
}

std::vector<RawWording> read_wordings(std::span<const Line> lines, Mistakes& mistakes) {
  Wordings wordings(mistakes);
  for (const Line& line : lines) wordings.take(line);
  return std::move(wordings).done();
}

}  // namespace wm::teach
