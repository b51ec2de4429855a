#include "core/sheet/opening.h"

namespace wm {

std::string_view word(SheetOpening opening) {
  switch (opening) {
    case SheetOpening::dress:
      return "dress";
    case SheetOpening::eyes_and_ears:
      return "eyes and ears";
    case SheetOpening::stance:
      return "stance";
    case SheetOpening::isolation:
      return "isolation";
    case SheetOpening::power:
      return "power";
  }
  return "";
}

std::optional<SheetOpening> opening_called(std::string_view called) {
  for (const SheetOpening opening : sheet_openings)
    if (word(opening) == called) return opening;
  return std::nullopt;
}

}  // namespace wm
