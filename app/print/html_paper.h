#pragma once
// A running text on paper: to the printer, or where there is none as a PDF among the user's documents.
#include <QString>

#include "app/print/printed.h"
#include "app/print/text_paper.h"
#include "app/session.h"

namespace wm::app {

/// The journal notes it under `title`. Gives the file that it was written to; empty: it went to the printer.
Expected<QString> print_html(Session& session, const QString& file_name, const QString& title,
                             const QString& html);

/// The same for a paper with head and foot; `blank`: for one that is a blank run sheet.
Expected<QString> print_laid(Session& session, const QString& file_name, const PaperText& text,
                             const LaidText& laid, const std::optional<Numbered>& blank = {});

}  // namespace wm::app
