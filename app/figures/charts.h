#pragma once
// A quiz in two pictures of one hue, which also print in black and white: how many had how many right, and
// each question by how hard it is and how well it tells strong from weak.
#include <QWidget>

#include "core/teach/bank_figures.h"

namespace wm::app {

/// Hatched below the pass mark of the newest revision, filled from there on. Null where the papers have
/// different lengths, or nobody sat.
QWidget* spread_chart(const teach::BankFigures& bank);
/// Squares for the questions to look at, dots for the others. Null where no question has both figures.
QWidget* question_chart(const teach::BankFigures& bank);

}  // namespace wm::app
