#include "core/text/settings.h"

#include <algorithm>
#include <charconv>

namespace wm::text {
namespace {

bool has(const std::vector<std::string_view>& keys, std::string_view key) {
  return std::find(keys.begin(), keys.end(), key) != keys.end();
}

std::string listed(const std::vector<std::string_view>& once, const std::vector<std::string_view>& lists) {
  std::string all;
  for (const auto* keys : {&once, &lists})
    for (const std::string_view key : *keys) all.append(all.empty() ? "" : ", ").append(key);
  return all;
}

}  // namespace

Settings::Settings(std::size_t title, std::span<const Line> lines, const std::vector<std::string_view>& once,
                   const std::vector<std::string_view>& lists, Mistakes& mistakes)
    : title_(title), mistakes_(mistakes) {
  for (const Line& line : lines) take(line, once, lists);
}

void Settings::take(const Line& line, const std::vector<std::string_view>& once,
                    const std::vector<std::string_view>& lists) {
  const std::size_t colon = std::min(line.text.find(':'), line.text.size());
  const std::string key = plain_words(line.text.substr(0, colon));
  const std::string value = plain_words(line.text.substr(std::min(colon + 1, line.text.size())));
  if (colon == line.text.size() || !(has(once, key) || has(lists, key)))
    return mistakes_.add(line.number, "Nothing like " + quoted(line.text) + " is known here.",
                         "Write one of these, a colon and its value: " + listed(once, lists) + ".");
  if (value.empty())
    return mistakes_.add(line.number, "Nothing stands after " + quoted(key) + ".", "Add it.");
  auto& settings = found_[key];
  if (!settings.empty() && !has(lists, key))
    return mistakes_.add(line.number, quoted(key) + " stands here for the second time.",
                         "Keep one of the two.");
  settings.push_back({line.number, value});
}

std::optional<Setting> Settings::need(std::string_view key) const {
  auto setting = may(key);
  if (!setting)
    mistakes_.add(title_, "There is no " + quoted(key) + ".", "Add a line \"" + std::string(key) + ": …\".");
  return setting;
}

std::optional<Setting> Settings::may(std::string_view key) const {
  const auto settings = all(key);
  return settings.empty() ? std::nullopt : std::optional(settings.front());
}

std::span<const Setting> Settings::all(std::string_view key) const {
  const auto at = found_.find(key);
  return at == found_.end() ? std::span<const Setting>() : at->second;
}

void Settings::wrong(const Setting& setting, std::string what, std::string remedy) const {
  mistakes_.add(setting.line, std::move(what), std::move(remedy));
}

bool yes(const Settings& settings, std::string_view key) {
  const auto setting = settings.may(key);
  if (!setting) return false;
  if (setting->value != "yes" && setting->value != "no")
    settings.wrong(*setting, "This is " + quoted(setting->value) + ".", "Write yes or no.");
  return setting->value == "yes";
}

int whole(const Settings& settings, const Setting& setting, std::string_view digits, int low, int high,
          int otherwise) {
  int number = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  if (error == std::errc() && end == digits.data() + digits.size() && number >= low && number <= high)
    return number;
  settings.wrong(setting, quoted(digits) + " is no number that can stand here.",
                 "Write a whole number from " + std::to_string(low) + " to " + std::to_string(high) + ".");
  return otherwise;
}

}  // namespace wm::text
