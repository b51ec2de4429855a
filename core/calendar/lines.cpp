#include "core/calendar/lines.h"

#include <algorithm>
#include <optional>

#include "core/text/utf8.h"

namespace wm::calendar {
namespace {

std::string in_capitals(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return out;
}

bool part_of_name(char c) {
  return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
}

bool can_be_shown(const ContentLine& line, Mistakes& mistakes) {
  const Flaw flaw = flaw_in(line.text);
  if (flaw == Flaw::none) return true;
  if (flaw == Flaw::not_utf8)
    mistakes.add(line.number, "Some of this line is not UTF-8.", "Save the calendar as UTF-8.");
  else
    mistakes.add(line.number, "There is a character here that no calendar may have.", "Take it out.");
  return false;
}

/// Takes the next content line off the text; lines that begin with a blank go on with the one before.
class Unfolding {
 public:
  Unfolding(std::string_view text, Mistakes& mistakes) : rest_(text), mistakes_(mistakes) {
    if (rest_.starts_with("\xEF\xBB\xBF")) rest_.remove_prefix(3);
  }

  std::optional<ContentLine> next() {
    while (!rest_.empty()) {
      ContentLine line{number_ + 1, {}, std::string(take())};
      bool too_long = false;
      while (!rest_.empty() && (rest_.front() == ' ' || rest_.front() == '\t')) {
        const std::string_view more = take().substr(1);
        too_long = too_long || line.text.size() + more.size() > longest_line;
        if (!too_long) line.text += more;
      }
      if (line.text.empty() && !too_long) continue;
      if (too_long || line.text.size() > longest_line) {
        mistakes_.add(line.number, "This line has more than 16,000 bytes.",
                      "Leave out what takes so much room.");
        continue;
      }
      if (can_be_shown(line, mistakes_) && named(line)) return line;
    }
    return std::nullopt;
  }
  std::size_t number() const { return number_; }

 private:
  std::string_view take() {
    const std::size_t end = std::min(rest_.find('\n'), rest_.size());
    std::string_view line = rest_.substr(0, end);
    if (line.ends_with('\r')) line.remove_suffix(1);
    rest_.remove_prefix(std::min(end + 1, rest_.size()));
    ++number_;
    return line;
  }

  bool named(ContentLine& line) {
    const auto end = std::find_if_not(line.text.begin(), line.text.end(), part_of_name);
    line.name = in_capitals({line.text.begin(), end});
    if (!line.name.empty() && end != line.text.end() && (*end == ':' || *end == ';')) return true;
    mistakes_.add(line.number, quoted(line.text) + " is no line of a calendar.",
                  "A line begins with a name and a colon: \"DTSTART:20260302T090000Z\".");
    return false;
  }

  std::string_view rest_;
  Mistakes& mistakes_;
  std::size_t number_ = 0;
};

class Nesting {
 public:
  explicit Nesting(Mistakes& mistakes) : mistakes_(mistakes) {}

  void add(ContentLine line) {
    if (line.name == "BEGIN") return begin(line);
    if (line.name == "END") return end(line);
    if (open_.empty()) {
      mistakes_.add(line.number, "This stands outside of any calendar.",
                    "A calendar begins with \"BEGIN:VCALENDAR\".");
      return;
    }
    open_.back().lines.push_back(std::move(line));
  }
  std::vector<Component> done() {
    for (const Component& each : open_)
      mistakes_.add(each.number, "This " + quoted(each.name) + " is not closed.",
                    "The file was cut off, or its \"END:" + each.name + "\" is missing.");
    return std::move(whole_);
  }
  bool too_deep() const { return open_.size() > most_depth; }

 private:
  void begin(const ContentLine& line) {
    open_.push_back({in_capitals(line.value()), line.number, {}, {}});
    if (too_deep())
      mistakes_.add(line.number, "Parts of this calendar lie more than 6 deep in one another.",
                    "Save it anew from the program it comes from.");
  }
  void end(const ContentLine& line) {
    if (open_.empty() || open_.back().name != in_capitals(line.value())) {
      mistakes_.add(line.number, quoted(line.value()) + " is closed here, but it is not what was begun last.",
                    open_.empty() ? "Take this line out."
                                  : "Close " + quoted(open_.back().name) + " from line " +
                                        std::to_string(open_.back().number) + " first.");
      return;
    }
    Component closed = std::move(open_.back());
    open_.pop_back();
    (open_.empty() ? whole_ : open_.back().components).push_back(std::move(closed));
  }

  Mistakes& mistakes_;
  std::vector<Component> open_, whole_;
};

}  // namespace

std::string_view ContentLine::value() const {
  const std::size_t colon = text.find(':');
  std::string_view out = std::string_view(text).substr(std::min(colon + 1, text.size()));
  while (out.ends_with(' ')) out.remove_suffix(1);
  return out;
}

std::vector<Component> components(std::string_view text, Mistakes& mistakes) {
  if (text.size() > most_bytes) {
    mistakes.add(1, "This calendar has more than 8,000,000 bytes.", "Save fewer months of it.");
    return {};
  }
  Unfolding lines(text, mistakes);
  Nesting nesting(mistakes);
  while (auto line = lines.next()) {
    nesting.add(std::move(*line));
    if (nesting.too_deep()) return {};
  }
  std::vector<Component> out = nesting.done();
  if (out.empty() && mistakes.none())
    mistakes.add(1, "There is no calendar in this file.",
                 "Choose a file in the iCalendar format, mostly named \".ics\".");
  return out;
}

}  // namespace wm::calendar
