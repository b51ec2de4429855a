#pragma once
// Quizzes that the desk has offered for later today. No record: whoever comes to a station can take a quiz
// without one.
#include <optional>
#include <string>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct OfferedQuiz {
  PersonId person;
  std::string quiz;
  Instant at;
};

/// Kept in this computer's own folder; without one nothing is kept.
std::optional<Problem> offer_later(const Session& session, const OfferedQuiz& offered);
/// Today's, less those that have been begun since, in order of time.
std::vector<OfferedQuiz> offered_quizzes(const Session& session);

}  // namespace wm::app
