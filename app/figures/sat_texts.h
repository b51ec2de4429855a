#pragma once
// What the figures are worked out from: texts alone, taken out of the journal, so that another thread can do
// it.
#include <string>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct SatTexts {
  std::vector<std::string> banks;     // as issued, every revision
  std::vector<std::string> attempts;  // as handed in; of quizzes that count
  std::size_t blanked = 0;            // attempts whose answers have been erased
  Instant first, last;                // when the earliest and the latest of them were handed in
  friend bool operator==(const SatTexts&, const SatTexts&) = default;
};

/// As known at the session's date.
SatTexts sat_texts(const Session& session);

}  // namespace wm::app
