#pragma once
// What stands on the right of the page Figures: the questions to look at first, or one quiz.
#include <QWidget>
#include <vector>

#include "core/sheet/agreed.h"
#include "core/teach/bank_figures.h"

namespace wm::app {

/// Those that something is wrong with as cards, then those that tell little in a line each.
QWidget* look_first_view(const std::vector<teach::BankFigures>& banks);
/// How far assessors agree: each sheet, its worst lines first.
QWidget* agreed_view(const std::vector<SheetAgreed>& sheets);
/// Its scores, its pictures, and each of its questions, those of the newest revision first.
QWidget* bank_view(const teach::BankFigures& bank);

/// Questions in the order in which they stand in the bank, the newest revisions first.
std::vector<const teach::QuestionFigures*> in_order_of_bank(const teach::BankFigures& bank);
/// "220 attempts, 68 % (61 to 74 %) passed." and what was left out.
QString attempts_sentence(const teach::BankFigures& bank);

}  // namespace wm::app
