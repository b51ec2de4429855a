#pragma once
// The figures as a paper: words and tables, to a PDF or a printer.
#include <QPrinter>

#include "app/print/paper.h"
#include "app/session.h"
#include "core/sheet/agreed.h"
#include "core/teach/bank_figures.h"

namespace wm::app {

/// All or nothing; the pages written, or why not. Noted in the journal as every paper is.
Expected<int> write_figures_pdf(Session& session, const std::vector<teach::BankFigures>& banks,
                                const std::vector<SheetAgreed>& sheets, const QString& summary,
                                const QString& path, PaperSize size);
Expected<void> print_figures(Session& session, const std::vector<teach::BankFigures>& banks,
                             const std::vector<SheetAgreed>& sheets, const QString& summary,
                             QPrinter& printer, PaperSize size);

}  // namespace wm::app
