#pragma once
// What an edit of a bank comes to, in sentences; and who would have to sit the quiz again, from when.
#include <QString>

#include "app/session.h"
#include "core/teach/bank_changes.h"

namespace wm::app {

/// A sentence for each kind of change; "Nothing has changed." where there is none.
QStringList bank_change_sentences(const teach::BankChanges& changes);
/// Who would have to sit it again, by when, were that revision to count from then on.
QStringList sit_again_sentences(Session& session, const std::string& bank, int revision, Instant from);

}  // namespace wm::app
