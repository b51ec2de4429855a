#pragma once
// A run sheet's text as it stands, before it is known what it says.
#include <string>
#include <vector>

#include "core/sheet/sheet.h"
#include "core/text/settings.h"

namespace wm::sheet_text {

using text::Line;
using text::Mistakes;
using text::plain_words;
using text::quoted;
using text::Setting;
using text::Settings;

/// A line to be marked, with the lines that stand below it.
struct RawLine {
  std::size_t number = 0;
  bool critical = false;
  std::string text, says;
  std::vector<Line> settings;
};
struct RawSection {
  std::size_t number = 0;
  std::string name;
  std::vector<RawLine> lines;
};

/// Whether a section begins there: "[before]", whole or not.
inline bool begins_section(const Line& line) { return line.text.starts_with('['); }
/// From the first section on.
std::vector<RawSection> read_sections(std::span<const Line> lines, Mistakes& mistakes);

/// What may stand below a line: "opens" and what a measure has.
const std::vector<std::string_view>& line_keys();
/// What a line's settings say is measured; nothing where there is a mistake, or no measure.
std::optional<Measure> read_measure(const Settings& settings);

}  // namespace wm::sheet_text
