#include "core/sheet/opening.h"

namespace wm {

std::string_view word(Opening opening) {
  switch (opening) {
    case Opening::dress:
      return "dress";
    case Opening::eyes_and_ears:
      return "eyes and ears";
    case Opening::stance:
      return "stance";
    case Opening::isolation:
      return "isolation";
    case Opening::power:
      return "power";
  }
  return "";
}

std::optional<Opening> opening_called(std::string_view called) {
  for (const Opening opening : openings)
    if (word(opening) == called) return opening;
  return std::nullopt;
}

}  // namespace wm
