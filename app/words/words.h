#pragma once
// What all pages say: names, days, standings, refusals. By the shop's word list; nothing in this folder
// works an answer out.
#include <QString>

#include "app/words/days.h"
#include "app/words/labels.h"
#include "app/words/standing_words.h"
#include "core/problem.h"

namespace wm::app {

/// One sentence of a Problem: what is wrong, and what to do.
QString problem_sentence(const Problem& problem);
/// "This records permission; it does not make the machine safe. …": on every page and paper that answers.
QString caution();

}  // namespace wm::app
