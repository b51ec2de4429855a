#pragma once
// Figures as people read them: numbers where there are some, and in words why there is none.
#include <QString>
#include <optional>

#include "core/figures/interval.h"
#include "core/teach/bank_figures.h"

namespace wm::app {

/// "0.42" as the locale has it, with a real minus; why there is none in two words ("drawn papers").
QString figure_cell(const teach::Figure& figure, int decimals = 2);
/// What those two words mean, as a sentence.
QString no_figure_sentence(teach::NoFigure why);
QString number(double value, int decimals);
/// "68 %"
QString share_words(std::size_t count, std::size_t of);
/// "68 % (61 to 74 %)": the share and Wilson's 95 % interval; "nobody" of none.
QString share_with_interval(std::size_t count, std::size_t of);

/// Why a question should be looked at, a sentence for each reason; and what to look for.
QString doubt_sentence(const teach::Reason& reason, const teach::QuestionFigures& figures,
                       const teach::Wording* wording);
QString doubt_advice(teach::Doubt doubt);
/// "Right: 32 of 46, 70 % (55 to 81 %). With the rest of the paper: −0.39."
QString question_sentence(const teach::QuestionFigures& figures);
/// The choice's own words, or its number where the bank can't be read.
QString choice_words(const teach::Wording* wording, std::size_t choice);
/// In the language of the program where the question is worded in it, else the bank's first.
const teach::Wording* shown_wording(const teach::Question* question);

}  // namespace wm::app
