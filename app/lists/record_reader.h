#pragma once
// The session's names and records, as the sentences of records ask for them.
#include "app/session.h"
#include "app/words/record_words.h"

namespace wm::app {

/// With the names of `known()`. Good until the next commit: it points into the store's journal.
RecordReader record_reader(const Session& session);

}  // namespace wm::app
