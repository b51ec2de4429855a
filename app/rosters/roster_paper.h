#pragma once
// The roster as a paper: to a PDF, or to a printer.
#include <QPrinter>

#include "app/print/paper.h"
#include "app/rosters/roster_table.h"

namespace wm::app {

/// Writes the roster of the session's dates to `path`, all or nothing; the pages written, or why not.
Expected<int> write_roster_pdf(Session& session, const RosterChoice& choice, const QString& path,
                               PaperSize size = paper_size());
/// What the paper of a table says, and on how many pages.
struct RosterWords {
  QString title, words;
  int pages = 0;
};
RosterWords roster_words(const RosterTable& table, const RosterChoice& choice, PaperSize size);
/// Prints a table that has been shown; false where the printer does not take it.
bool print_roster(const RosterTable& table, const RosterChoice& choice, QPrinter& printer, PaperSize size);
Expected<int> write_roster_pdf(const RosterTable& table, const RosterChoice& choice, const QString& path,
                               PaperSize size);

}  // namespace wm::app
