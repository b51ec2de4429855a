// Name, revision, languages and blueprint of a bank.
#include <algorithm>
#include <set>

#include "core/teach/reading.h"

namespace wm::teach {
namespace {

/// Letters, then parts of letters and digits (the shape of RFC 5646's tags, section 2.1).
bool is_language(std::string_view tag) {
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  std::size_t size = 0;
  bool first = true;
  for (const char c : tag) {
    if (c == '-') {
      if (size == 0) return false;
      first = false;
      size = 0;
    } else if (++size > 8 || !(letter(c) || (!first && c >= '0' && c <= '9'))) {
      return false;
    }
  }
  return size > 0 && tag.size() <= 35 && std::min(tag.find('-'), tag.size()) >= 2;
}

std::vector<std::string> languages(const Settings& settings) {
  std::vector<std::string> all;
  const auto setting = settings.need("languages");
  if (!setting) return all;
  for (std::size_t from = 0; from <= setting->value.size();) {
    const std::size_t comma = std::min(setting->value.find(',', from), setting->value.size());
    const std::string tag = plain_words(std::string_view(setting->value).substr(from, comma - from));
    from = comma + 1;
    if (!is_language(tag))
      settings.wrong(*setting, quoted(tag) + " is no language tag.",
                     "Write tags like en, es or pt-BR, commas between.");
    else if (std::find(all.begin(), all.end(), tag) != all.end())
      settings.wrong(*setting, quoted(tag) + " stands here twice.", "Name each language once.");
    else if (all.size() == 40)
      return settings.wrong(*setting, "There are more than 40 languages here.",
                            "Keep a bank for some of them."),
             all;
    else
      all.push_back(tag);
  }
  return all;
}

/// A whole number of the unit, which may be left out.
std::optional<int> whole_measure(const Settings& settings, const Setting& setting, Unit unit, int most) {
  const auto read = read_measure(setting.value, unit);
  if (read && same_dimension(read->unit, unit)) {
    const Fraction number = in_base_unit(*read) / in_base_unit({1, unit});
    if (number.get_den() == 1 && number >= 1 && number <= most)
      return static_cast<int>(number.get_num().get_si());
  }
  settings.wrong(setting, quoted(setting.value) + " can't stand here.",
                 "Write a whole number from 1 to " + std::to_string(most) + ", like \"" +
                     to_text(Measure{most / 2, unit}) + "\".");
  return std::nullopt;
}

void draw(const Settings& settings, const Setting& setting, Top& top) {
  const std::size_t of = setting.value.find(" of ");
  if (of == std::string::npos)
    return settings.wrong(setting, "This doesn't say how many of what.",
                          "Write like \"draw: 3 of kickback\".");
  Draw draw;
  draw.count = whole(settings, setting, std::string_view(setting.value).substr(0, of), 1,
                     static_cast<int>(most_questions), 1);
  draw.topic = name(settings, setting).substr(of + 4);
  top.bank.draws.push_back(std::move(draw));
  top.draws.push_back(setting.line);
}

void draws(const Settings& settings, Top& top) {
  for (const Setting& setting : settings.all("draw")) draw(settings, setting, top);
  std::set<std::string_view> topics;
  for (std::size_t i = 0; i < top.bank.draws.size(); ++i)
    if (!topics.insert(top.bank.draws[i].topic).second)
      settings.mistakes().add(top.draws[i], "This topic is drawn by a line before.", "Keep one of the two.");
  if (top.bank.draws.empty()) settings.need("draw");
}

}  // namespace

std::string name(const Settings& settings, const Setting& setting) {
  if (setting.value.size() > 200)
    settings.wrong(setting, "This name has more than 200 bytes.", "Write a shorter one.");
  return setting.value;
}

Top read_top(std::span<const Line> lines, Mistakes& mistakes) {
  Top top;
  if (!lines.empty()) top.first_line = lines.front().number;
  const Settings settings(top.first_line, lines, {"bank", "revision", "languages", "pass", "time"}, {"draw"},
                          mistakes);
  if (const auto setting = settings.need("bank")) top.bank.name = name(settings, *setting);
  if (const auto setting = settings.need("revision"))
    top.bank.revision = whole(settings, *setting, setting->value, 1, highest_revision, 1);
  top.bank.languages = languages(settings);
  if (const auto setting = settings.need("pass"))
    top.bank.pass_percent = whole_measure(settings, *setting, Unit::percent, 100).value_or(100);
  if (const auto setting = settings.need("time"); setting && setting->value != "none")
    top.bank.minutes = whole_measure(settings, *setting, Unit::minute, 600);
  draws(settings, top);
  return top;
}

}  // namespace wm::teach
