#include "core/records/record.h"

#include <array>

namespace wm {

WM_COMPILED_HERE(Fact);

std::string_view kind_word(const Fact& fact) {
  static constexpr std::array<std::string_view, kinds_in<Fact>> words = {
      "birth",   "document",  "lesson",  "quiz",    "checkout", "supervised", "use",     "incident",
      "suspend", "reinstate", "appoint", "dismiss", "publish",  "lockout",    "release", "change"};
  return words[fact.index()];
}

std::string_view word(Rung rung) {
  switch (rung) {
    case Rung::barred:
      return "barred";
    case Rung::supervised:
      return "supervised";
    case Rung::independent:
      return "independent";
  }
  return "";
}

std::string_view word(Outcome outcome) {
  switch (outcome) {
    case Outcome::passed:
      return "passed";
    case Outcome::failed:
      return "failed";
    case Outcome::stopped:
      return "stopped";
  }
  return "";
}

std::string_view word(Part part) {
  switch (part) {
    case Part::operating:
      return "operating";
    case Part::supervising:
      return "supervising";
    case Part::hurt:
      return "hurt";
    case Part::saw:
      return "saw";
  }
  return "";
}

}  // namespace wm
