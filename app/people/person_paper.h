#pragma once
// All that the shop holds about one person, as a paper for that person: details, what they may use and why,
// every record.
#include "app/print/paper.h"
#include "app/session.h"

namespace wm::app {

/// Who somebody is, as the title of a paper: the name, or the number where only that is left.
QString person_paper_name(const Session& session, const PersonId& person);

/// Writes the paper; the journal notes it. Answers the number of pages.
Expected<int> write_person_pdf(Session& session, const PersonId& person, const QString& path, PaperSize size);

}  // namespace wm::app
