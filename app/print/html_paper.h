#pragma once
// A running text on paper: to the printer, or where there is none as a PDF among the user's documents.
#include <QString>

#include "app/session.h"

namespace wm::app {

/// The journal notes it under `title`. Gives the file that it was written to; empty: it went to the printer.
Expected<QString> print_html(Session& session, const QString& file_name, const QString& title,
                             const QString& html);

}  // namespace wm::app
