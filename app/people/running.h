#pragma once
// Pauses and appointments: begun by one record, over on a day or by another record.
#include <algorithm>

#include "app/session.h"
#include "db/journal/subject.h"

namespace wm::app {

/// The fact of an entry that began something which runs now, as known; null otherwise. `named`: the field of
/// End that says which.
template <class Begun, class End>
const Begun* running(const Session& session, const db::Entry& entry, RecordId End::*named) {
  const auto* begun = session.counts(entry) ? db::as<Begun>(entry.fact) : nullptr;
  const Instant now = session.known().value_or(session.now());
  if (!begun || entry.at > now || (begun->until && now >= session.zone().start(*begun->until + 1)))
    return nullptr;
  const bool ended = std::ranges::any_of(session.store().entries(), [&](const db::Entry& each) {
    const auto* end = db::as<End>(each.fact);
    return end && end->*named == entry.id && each.at <= now && session.counts(each);
  });
  return ended ? nullptr : begun;
}

}  // namespace wm::app
