#include "app/figures/sat_texts.h"

#include "db/journal/subject.h"

namespace wm::app {

SatTexts sat_texts(const Session& session) {
  SatTexts texts;
  for (const db::Entry& entry : session.store().entries()) {
    if (!session.counts(entry)) continue;
    if (const auto* issued = db::as<db::Issued>(entry.fact); issued && issued->work == db::Work::bank)
      texts.banks.push_back(issued->text);
    const auto* sat = db::as<db::AttemptSat>(entry.fact);
    const db::Entry* quiz = sat ? session.entry(sat->quiz) : nullptr;
    if (!quiz || !session.counts(*quiz)) continue;
    if (sat->attempt.empty()) {
      ++texts.blanked;
      continue;
    }
    if (texts.attempts.empty() || entry.at < texts.first) texts.first = entry.at;
    if (texts.attempts.empty() || texts.last < entry.at) texts.last = entry.at;
    texts.attempts.push_back(sat->attempt);
  }
  return texts;
}

}  // namespace wm::app
