#pragma once
// A proposal for everyone who waits, as sentences.
#include <QString>

#include "app/diary/fitting.h"

namespace wm::app {

/// "Thursday 26 November, 18:00–19:00: Jonas Lindqvist with Mara Devlin on Jointer/planer, unit 1"
QString placed_words(const Session& session, const Fitted& fitted, const Placed& placed);
/// "4 of 6 are served, on 2 days of assessors. There is no better proposal."
QString proposal_words(const Fitted& fitted);
/// Why somebody is left out, in a sentence or two.
QString left_out_words(const Session& session, const Fitted& fitted, const LeftOut& left);

}  // namespace wm::app
