#pragma once
// A quiz's scores as a table: all attempts, and by revision, language and topic.
#include <QString>
#include <vector>

#include "core/teach/bank_figures.h"

namespace wm::app {

struct GroupRow {
  QString name;
  QStringList cells;
};

/// What stands over the cells, and what each figure is, in a sentence.
QStringList group_titles();
QStringList group_explanations();
std::vector<GroupRow> group_rows(const teach::BankFigures& bank);
/// Why some cells have no number: a sentence for each reason that occurs.
QStringList missing_sentences(const teach::BankFigures& bank);

}  // namespace wm::app
