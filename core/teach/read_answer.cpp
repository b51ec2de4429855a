// Numbers and places as a question's settings have them.
#include <algorithm>
#include <charconv>

#include "core/teach/reading.h"

namespace wm::teach {
namespace {

std::optional<Measure> measure(const Settings& settings, const Setting& setting, Unit otherwise) {
  const auto read = read_measure(setting.value, otherwise);
  if (read) return *read;
  settings.wrong(setting, read.error().what, read.error().remedy);
  return std::nullopt;
}

/// All numbers of a line, commas as good as blanks; nothing where one is none or outside the picture.
std::optional<std::vector<int>> per_mille(std::string_view text) {
  std::vector<int> numbers;
  for (;;) {
    text.remove_prefix(std::min(text.find_first_not_of(" ,"), text.size()));
    if (text.empty()) return numbers;
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || number < 0 || number > 1000) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    if (!text.empty() && text.front() != ' ' && text.front() != ',') return std::nullopt;
    numbers.push_back(number);
  }
}

std::optional<Region> rectangle(const std::vector<int>& n) {
  if (n.size() != 4 || n[0] >= n[2] || n[1] >= n[3]) return std::nullopt;
  return Rectangle{n[0], n[1], n[2], n[3]};
}

/// Not all of the triangles that it is cut into from its first corner are flat: a finger could hit it.
bool has_area(const Polygon& polygon) {
  const auto& c = polygon.corners;
  for (std::size_t i = 2; i < c.size(); ++i)
    if ((c[i - 1].x - c[0].x) * (c[i].y - c[0].y) != (c[i - 1].y - c[0].y) * (c[i].x - c[0].x)) return true;
  return false;
}

std::optional<Region> polygon(const std::vector<int>& n) {
  constexpr std::size_t most_corners = 100;
  if (n.size() < 6 || n.size() % 2 != 0 || n.size() > 2 * most_corners) return std::nullopt;
  Polygon polygon;
  for (std::size_t i = 0; i < n.size(); i += 2) polygon.corners.push_back({n[i], n[i + 1]});
  return has_area(polygon) ? std::optional<Region>(polygon) : std::nullopt;
}

std::optional<Region> region(std::string_view value) {
  const std::size_t blank = std::min(value.find(' '), value.size());
  const auto numbers = per_mille(value.substr(blank));
  if (!numbers) return std::nullopt;
  const std::string_view shape = value.substr(0, blank);
  return shape == "rectangle" ? rectangle(*numbers) : shape == "polygon" ? polygon(*numbers) : std::nullopt;
}

}  // namespace

ANumber number_answer(const Settings& settings) {
  ANumber number;
  const auto answer = settings.need("answer");
  if (answer) number.answer = measure(settings, *answer, Unit::none).value_or(Measure{});
  number.tolerance.unit = number.answer.unit;
  const auto tolerance = settings.may("within");
  if (!answer || !tolerance) return number;
  const auto read = measure(settings, *tolerance, number.answer.unit);
  if (!read) return number;
  if (!same_dimension(read->unit, number.answer.unit))
    settings.wrong(*tolerance, "The tolerance is in another kind of unit than the answer.",
                   "Give both as lengths, both as angles, and so on.");
  else if (read->value < 0)
    settings.wrong(*tolerance, "A tolerance below 0 takes no answer.", "Write 0 or more.");
  else
    number.tolerance = *read;
  return number;
}

APlace place_answer(const Settings& settings) {
  constexpr std::size_t most_regions = 20;
  APlace place;
  for (const Setting& setting : settings.all("place")) {
    if (auto read = region(setting.value); read && place.regions.size() < most_regions)
      place.regions.push_back(std::move(*read));
    else if (read)
      settings.wrong(setting, "There are more than 20 places here.", "Draw larger ones.");
    else
      settings.wrong(setting, "This is no place in a picture.",
                     "Write \"rectangle LEFT TOP RIGHT BOTTOM\" or \"polygon X Y, X Y, X Y\" with three "
                     "corners or more, "
                     "in thousandths of the picture from its top left corner.");
  }
  if (settings.all("place").empty()) settings.need("place");
  return place;
}

}  // namespace wm::teach
