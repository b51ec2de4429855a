#include "app/quiz/sat_attempt.h"

#include "db/journal/subject.h"

namespace wm::app {
const db::Entry* handed_in(const Session& session, const RecordId& record) {
  for (const db::Entry* entry : session.store().of_kind("attempt_sat")) {
    const auto* sat = db::as<db::AttemptSat>(entry->fact);
    if (entry->id == record || sat->begun == record || sat->quiz == record) return entry;
  }
  return nullptr;
}

std::optional<SatAttempt> sat_attempt(const Session& session, const RecordId& record) {
  const db::Entry* entry = handed_in(session, record);
  if (entry == nullptr) return std::nullopt;
  const auto* sat = db::as<db::AttemptSat>(entry->fact);
  const db::Entry* start = session.entry(sat->begun);
  const auto* begun = start ? db::as<db::AttemptBegun>(start->fact) : nullptr;
  const auto attempt = teach::read_attempt(sat->attempt);
  if (!begun || !attempt) return std::nullopt;
  auto bank = issued_bank(session, begun->bank, begun->revision);
  if (!bank) return std::nullopt;
  auto paper = teach::draw_paper(bank->bank, begun->seed);
  auto marking = teach::mark_attempt(bank->bank, *attempt);
  if (!paper || !marking) return std::nullopt;
  return SatAttempt{sat->person,      sat->begun,        entry->id, start->at,           entry->at,
                    std::move(*bank), std::move(*paper), *attempt,  std::move(*marking), begun->helps};
}

}  // namespace wm::app
