#pragma once
// The demo shop's quizzes: the pictures of its question banks, and what was answered.
#include <string>

#include "db/import/plan.h"

namespace wm::db {

/// The content of a picture that the program carries.
using CarriedPicture = std::string (*)(const std::string& name);

/// The pictures that a bank's text names, out of `carried`; none where it is no bank, which the store
/// refuses.
std::vector<Enclosure> pictures_of(const std::string& bank, CarriedPicture carried);

/// Puts an attempt in the place of every quiz of `history`, under the record's id: begun, and handed in when
/// the quiz was entered, so that the store marks it. `lines`: attempts.jsonl, in the order of the history.
/// Refuses lines that are not of these quizzes.
Expected<void> sit_quizzes(import::ImportPlan& history, const std::string& lines,
                           const import::Ground& ground);

}  // namespace wm::db
