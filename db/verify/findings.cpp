#include "db/verify/findings.h"

namespace wm::verify {

std::string_view word(FindingKind kind) {
  switch (kind) {
    case FindingKind::schema:
      return "schema";
    case FindingKind::shop:
      return "shop";
    case FindingKind::order:
      return "order";
    case FindingKind::leaf:
      return "leaf";
    case FindingKind::hash:
      return "hash";
    case FindingKind::column:
      return "column";
    case FindingKind::private_value:
      return "private_value";
    case FindingKind::blanked:
      return "blanked";
    case FindingKind::edge:
      return "edge";
    case FindingKind::signature:
      return "signature";
    case FindingKind::taken:
      return "taken";
    case FindingKind::altered:
      return "altered";
    case FindingKind::cut_off:
      return "cut_off";
    case FindingKind::unreadable:
      return "unreadable";
  }
  return "";
}

}  // namespace wm::verify
