#pragma once
// Why a slot fits, or why none does and what would help, as sentences.
#include <QString>

#include "app/diary/slots.h"

namespace wm::app {

/// "fits: Jonas ready, Mara able and in 15:00–20:00, 2 units free"
QString fit_words(const Session& session, const SlotQuestion& question, const Slot& slot);
/// Sentences: what stands in the way, and what would lift it.
QString none_words(Session& session, const SlotQuestion& question, const Wish& wish);

}  // namespace wm::app
