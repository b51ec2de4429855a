#pragma once
// A run sheet on paper, to be marked with a pencil where no station stands: every line with room for its
// marks, room for who, when and on which unit, and a number by which it is taken in later.
#include "app/print/paper.h"
#include "app/print/text_paper.h"
#include "app/session.h"
#include "core/sheet/sheet.h"

namespace wm::app {

struct BlankSheet {
  QString form;
  PaperText text;
  LaidText laid;
};

/// Six letters and digits, none of which is easily taken for another when it is read off a paper.
QString new_form_number();
/// What stands on it, as HTML; `two`: with a line for a second assessor's signature.
QString blank_sheet_html(const Sheet& sheet, bool two);
/// For two assessors where the rules of now ask for them.
BlankSheet blank_sheet(Session& session, const Sheet& sheet, const QString& form, PaperSize size);
/// To the printer, or where there is none among the user's documents, whose path it answers. The journal
/// notes it with its number.
Expected<QString> print_blank_sheet(Session& session, const Sheet& sheet);

}  // namespace wm::app
