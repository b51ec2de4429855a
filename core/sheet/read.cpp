#include <algorithm>

#include "core/sheet/reading.h"
#include "core/sheet/sheet_text.h"

namespace wm {
namespace sheet_text {
namespace {

constexpr std::size_t largest_text = 1u << 20;
constexpr int highest_revision = 1'000'000;

std::string name(const Settings& settings, std::string_view key, bool needed = true) {
  const auto setting = needed ? settings.need(key) : settings.may(key);
  if (setting && setting->value.size() > 200)
    settings.wrong(*setting, "This has more than 200 bytes.", "Write a shorter one.");
  return setting ? setting->value : std::string();
}

void read_top(std::span<const Line> lines, std::size_t first_line, Sheet& sheet, Mistakes& mistakes) {
  const Settings settings(first_line, lines, {"sheet", "revision", "class", "checkout", "title"}, {},
                          mistakes);
  sheet.name = name(settings, "sheet");
  if (const auto setting = settings.need("revision"))
    sheet.revision = text::whole(settings, *setting, setting->value, 1, highest_revision, 1);
  sheet.machine_class = name(settings, "class");
  sheet.checkout = name(settings, "checkout");
  sheet.title = name(settings, "title", false);
}

SheetLine read_line(const RawLine& raw, Mistakes& mistakes) {
  const Settings settings(raw.number, raw.settings, line_keys(), {}, mistakes);
  SheetLine line{raw.text, raw.says, raw.critical, read_measure(settings), {}};
  if (const auto opens = settings.may("opens")) {
    line.opens = opening_called(opens->value);
    if (!line.opens)
      settings.wrong(*opens, "No sheet opens with " + quoted(opens->value) + ".",
                     "Write dress, eyes and ears, stance, isolation or power.");
  }
  return line;
}

/// What is missing where one of them does.
const char* opening_words(SheetOpening opening) {
  switch (opening) {
    case SheetOpening::dress:
      return "dress: close sleeves, no gloves, hair and cords tied back";
    case SheetOpening::eyes_and_ears:
      return "eyes and ears: what protects them";
    case SheetOpening::stance:
      return "stance: where they stand, with the stop within reach";
    case SheetOpening::isolation:
      return "isolation: how it is stopped and isolated";
    case SheetOpening::power:
      return "power: what they do when it fails and comes back";
  }
  return "";
}

/// Every sheet opens with all of these, critical, before anything else; in which order, and whether one takes
/// two lines, is the shop's own.
void check_opening(const std::vector<RawSection>& raw, const Sheet& sheet, Mistakes& mistakes) {
  std::vector<SheetOpening> shown;
  bool opening = true;
  for (std::size_t s = 0; s < raw.size(); ++s)
    for (std::size_t i = 0; i < raw[s].lines.size(); ++i) {
      const SheetLine& line = sheet.sections[s].lines[i];
      const std::size_t number = raw[s].lines[i].number;
      opening = opening && line.opens;
      if (!line.opens) continue;
      if (!opening)
        mistakes.add(number, "A line with which the sheet is to open stands after another one.",
                     "Move it up, before all that is no part of the opening.");
      else if (!line.critical)
        mistakes.add(number, "A line with which the sheet opens is not critical.", "Begin it with *.");
      else
        shown.push_back(*line.opens);
    }
  if (!mistakes.none()) return;  // what stands wrong would be missing here a second time
  for (const SheetOpening each : sheet_openings)
    if (std::ranges::find(shown, each) == shown.end())
      mistakes.add(
          raw.front().number, std::string("The sheet does not open with ") + opening_words(each) + ".",
          "Write it as a critical line at the beginning, and below it \"opens: " + std::string(word(each)) +
              "\".");
}

}  // namespace
}  // namespace sheet_text

tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view words) {
  using namespace sheet_text;
  if (words.size() > largest_text)
    return tl::unexpected(
        std::vector{Problem{"", "The file is larger than 1 MiB.", "Choose the text of a run sheet."}});
  if (words.starts_with("\xEF\xBB\xBF")) words.remove_prefix(3);  // a byte order mark
  Mistakes mistakes;
  const std::vector<Line> lines = text::lines_of(words, mistakes);
  const auto first = std::ranges::find_if(lines, begins_section);
  Sheet sheet;
  read_top({lines.begin(), first}, lines.empty() ? 1 : lines.front().number, sheet, mistakes);
  const std::vector<RawSection> raw = read_sections({first, lines.end()}, mistakes);
  for (const RawSection& section : raw) {
    sheet.sections.push_back({section.name, {}});
    for (const RawLine& line : section.lines)
      sheet.sections.back().lines.push_back(read_line(line, mistakes));
  }
  if (raw.empty())
    mistakes.add(lines.empty() ? 1 : lines.back().number, "There is no section.",
                 "Begin one with its word in brackets, [before], and write its lines below.");
  if (mistakes.none()) check_opening(raw, sheet, mistakes);
  if (!mistakes.none()) return tl::unexpected(std::move(mistakes).in_order());
  return sheet;
}

}  // namespace wm
