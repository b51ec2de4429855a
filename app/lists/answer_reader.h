#pragma once
// What sentences about one person's answers need to know, out of the session.
#include "app/session.h"
#include "app/words/answer_parts.h"
#include "app/words/reader.h"

namespace wm::app {

/// Good until the next commit.
AnswerReader answer_reader(Session& session, const PersonId& person);

/// What check-outs left open, as known on the session's date; or as known at `known` (nothing: all).
Restrictions restrictions(const Session& session);
Restrictions restrictions(const Session& session, std::optional<Instant> known);
/// Those of a person on a target now, as all that is entered says.
QStringList restricted_now(Session& session, const PersonId& person, const TargetName& target);

/// What the person is called in a sentence.
QString called(const std::optional<db::Person>& person);

}  // namespace wm::app
