#pragma once
// Which lessons there are for somebody at the quiz station, and what can be gone through there.
#include <QString>
#include <string>
#include <vector>

#include "app/lists/issued.h"

namespace wm::app {

struct LessonOffer {
  std::string lesson;
  bool needed = false;  // a standing waits for it, or it is due
  QString stands;       // how it stands now
  /// What can be read here; nothing where no text of it is issued.
  std::optional<IssuedRevision> text;
  /// Why going through it here would not count; empty: it would.
  QString not_here;
};

/// Those that the gates of machines ask the person for, what is needed first.
std::vector<LessonOffer> lesson_offers(Session& session, const PersonId& person);

/// Enters that the person has gone through that revision: themselves, at the station.
Expected<db::Committed> enter_gone_through(Session& session, Lesson lesson);

}  // namespace wm::app
