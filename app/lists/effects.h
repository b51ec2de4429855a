#pragma once
// Whose standings an entry changes, in a few words beside a form or after it was entered.
#include <QString>
#include <vector>

#include "app/session.h"

namespace wm::app {

/// "Kim Aoki (bandsaw), Jonas Lindqvist (3 machines) and 12 more"; empty where there is none. No dates: one
/// of them may be somebody's birthday.
QString affected_words(const std::vector<Shift>& shifts, const db::Store& store);
/// "Standings that changed: …", or nothing where none did.
QString changed_sentence(const std::vector<Shift>& shifts, const db::Store& store);

}  // namespace wm::app
