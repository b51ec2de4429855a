#pragma once
// The figures as a table for a spreadsheet: a row for each group of attempts, each question and each choice;
// and how far assessors agree, a row for each sheet and each of its lines.
#include <QString>
#include <string>
#include <vector>

#include "core/problem.h"
#include "core/sheet/agreed.h"
#include "core/teach/bank_figures.h"

namespace wm::app {

/// UTF-8 with the mark that spreadsheets know it by; numbers with a point, whatever the language. A figure
/// that can't be worked out is an empty cell, and `missing` says why.
std::string figures_csv(const std::vector<teach::BankFigures>& banks, const std::vector<SheetAgreed>& agreed);
/// Whole or not at all.
Expected<void> write_figures_csv(const std::vector<teach::BankFigures>& banks,
                                 const std::vector<SheetAgreed>& agreed, const QString& path);

}  // namespace wm::app
