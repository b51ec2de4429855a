#include "app/figures/sat_texts.h"

#include "app/lists/issued.h"
#include "db/journal/subject.h"

namespace wm::app {

SatTexts sat_texts(const Session& session) {
  SatTexts texts;
  for (const IssuedRevision& bank : all_issued(session, db::Work::bank))
    texts.banks.push_back(bank.work->text);
  for (const db::Entry* entry : session.store().of_kind("attempt_sat")) {
    const auto* sat = session.counts(*entry) ? db::as<db::AttemptSat>(entry->fact) : nullptr;
    const db::Entry* quiz = sat ? session.entry(sat->quiz) : nullptr;
    if (!quiz || !session.counts(*quiz)) continue;
    if (sat->attempt.empty()) {
      ++texts.blanked;
      continue;
    }
    if (texts.attempts.empty() || entry->at < texts.first) texts.first = entry->at;
    if (texts.attempts.empty() || texts.last < entry->at) texts.last = entry->at;
    texts.attempts.push_back(sat->attempt);
  }
  return texts;
}

}  // namespace wm::app
