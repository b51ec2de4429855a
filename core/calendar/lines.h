#pragma once
// An iCalendar file as its content lines, unfolded (RFC 5545, 3.1), and the components they make.
#include <string>
#include <string_view>
#include <vector>

#include "core/text/lines.h"

namespace wm::calendar {

using text::Mistakes;
using text::quoted;

constexpr std::size_t most_bytes = 8'000'000, longest_line = 16'000, most_depth = 6;

/// One property as it stands: "DTSTART;TZID=Europe/Berlin:20260302T090000". `number` is that of its first
/// line.
struct ContentLine {
  std::size_t number = 0;
  std::string name;  // in capitals
  std::string text;
  /// What follows the colon of a line without parameters, as BEGIN and STATUS have it.
  std::string_view value() const;
};

struct Component {
  std::string name;  // in capitals
  std::size_t number = 0;
  std::vector<ContentLine> lines;
  std::vector<Component> components;
};

/// Those of the file, in order. What is too large, nested too deep, not UTF-8 or not closed is a mistake.
std::vector<Component> components(std::string_view text, Mistakes& mistakes);

}  // namespace wm::calendar
