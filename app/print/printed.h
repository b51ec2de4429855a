#pragma once
// Printed papers in the journal: later somebody can tell whether a paper is one that came from here.
#include <optional>

#include "app/session.h"

namespace wm::app {

/// The ledger's head as known at `known()`, in its short form: by it somebody can tell later whether what a
/// paper was made from was changed since. Empty where it cannot be read.
QString ledger_code(const Session& session);

/// SHA-256 of a paper's words in UTF-8, in hexadecimal.
std::string words_digest(const QString& words);
/// What a blank run sheet is, and the number at its foot.
struct Numbered {
  QString form;
  std::string sheet;
  int revision = 0;
};
/// Notes that a paper left the program; `blank`: for one that is a blank sheet. Where that can't be entered
/// the paper is out all the same, and the Problem says so.
Expected<void> note_printed(Session& session, const QString& title, int pages, const QString& words,
                            const std::optional<Numbered>& blank = {});

}  // namespace wm::app
