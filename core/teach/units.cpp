#include "core/teach/units.h"

#include <algorithm>

namespace wm::teach {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

}  // namespace

std::string_view word(Unit unit) {
  switch (unit) {
    case Unit::none:
      return "";
    case Unit::inch:
    case Unit::foot:
    case Unit::millimetre:
    case Unit::centimetre:
      return wm::word(*length_unit(unit));
    case Unit::degree:
      return "degrees";
    case Unit::percent:
      return "%";
    case Unit::second:
      return "s";
    case Unit::minute:
      return "min";
    case Unit::hour:
      return "h";
    case Unit::rpm:
      return "rpm";
  }
  return "";
}

std::optional<LengthUnit> length_unit(Unit unit) {
  switch (unit) {
    case Unit::inch:
      return LengthUnit::inch;
    case Unit::foot:
      return LengthUnit::foot;
    case Unit::millimetre:
      return LengthUnit::millimetre;
    case Unit::centimetre:
      return LengthUnit::centimetre;
    case Unit::none:
    case Unit::degree:
    case Unit::percent:
    case Unit::second:
    case Unit::minute:
    case Unit::hour:
    case Unit::rpm:
      return std::nullopt;
  }
  return std::nullopt;
}

Unit unit_of(LengthUnit length) {
  switch (length) {
    case LengthUnit::inch:
      return Unit::inch;
    case LengthUnit::foot:
      return Unit::foot;
    case LengthUnit::millimetre:
      return Unit::millimetre;
    case LengthUnit::centimetre:
      return Unit::centimetre;
  }
  return Unit::none;
}

std::optional<std::string_view> without_word(std::string_view text, std::string_view word) {
  text = text.substr(0, text.find_last_not_of(" \t") + 1);
  if (text.ends_with('.')) text.remove_suffix(1);
  if (text.size() < word.size()) return std::nullopt;
  const std::string_view end = text.substr(text.size() - word.size());
  const bool same =
      std::equal(end.begin(), end.end(), word.begin(), [](char a, char b) { return lower(a) == b; });
  return same ? std::optional(text.substr(0, text.size() - word.size())) : std::nullopt;
}

}  // namespace wm::teach
