#pragma once
// What an edit of a run sheet comes to, in sentences; and who would have to be checked out again, from when.
#include <QStringList>

#include "app/session.h"
#include "core/sheet/changes.h"

namespace wm::app {

/// A sentence for each kind of change between the two; "No line has changed." where there is none.
QStringList sheet_change_sentences(const Sheet& before, const Sheet& after);
/// Where the rules in force have no such machine class, or ask for no such check-out there.
QStringList unused_sentences(Session& session, const Sheet& sheet);
/// Who would have to be checked out again, by when, were that revision to count from then on.
QStringList check_out_again_sentences(Session& session, const Sheet& sheet, Instant from);

}  // namespace wm::app
