#pragma once
// What a paper says, as text: the same drawing that a printer gets, read instead of inked.
#include "app/print/paper.h"

namespace wm::app {

/// The words in the order in which they are drawn, a line for each piece and a form feed after each page.
QString paper_words(const PaperText& text, int pages, const DrawBody& draw);

}  // namespace wm::app
