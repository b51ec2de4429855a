#pragma once
// The papers, lessons, quizzes and check-outs that a rulebook asks for anywhere.
#include <set>
#include <string>

#include "app/session.h"

namespace wm::app {

struct Items {
  std::set<std::string> documents, lessons, quizzes, checkouts;
};
Items items_of(const Rulebook& rulebook);
/// What one gate asks for, in whichever of its parts.
Items items_of(const Gate& gate);

/// The greatest revision of the item published by now, 0 where there is none.
int published_revision(const Session& session, const std::string& item);

}  // namespace wm::app
