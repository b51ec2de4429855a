#pragma once
// The answer on paper: what somebody may do, what is missing, what to do next. For the person to take along.
#include "app/desk/answer.h"
#include "core/problem.h"

namespace wm::app {

/// To the system's printer, or where there is none as a PDF among the user's documents; the journal notes it.
/// Gives the sentence that says where it went.
Expected<QString> print_answer(Session& session, const QString& name, const DeskAnswer& answer,
                               const QString& next);
/// The sheet's text as HTML, for the printer and for tests.
QString answer_sheet(const Session& session, const QString& name, const DeskAnswer& answer,
                     const QString& next);

}  // namespace wm::app
