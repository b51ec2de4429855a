#pragma once
// What is kept at this station of a run sheet that went on, or ended, somewhere else: what became of the
// sheet, and what of it is in no store.
#include "app/checkouts/drafts.h"

namespace wm::app {

/// "The run sheet of Tola Adeyemi, Jointer/planer, unit 1"
QString sheet_words(const Session& session, const OneOnOne& one);
/// Why the sheet that the draft's marks belong to takes no more of them, as a sentence's end; nothing where
/// it still does. `one`: what the draft is of, as it is listed now; null where it is no longer.
std::optional<QString> became_of(const Session& session, const Draft& draft, const OneOnOne* one);
/// "Marked here and not sent: line 3, shown; line 5, not shown. Typed here: no dado." Empty where all of it
/// is in the store.
QString not_sent_words(const Session& session, const Draft& draft);

}  // namespace wm::app
