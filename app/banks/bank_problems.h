#pragma once
// What stands in the way of issuing a bank's text: the reader's mistakes, and what does not fit with what was
// issued before.
#include <QString>
#include <optional>

#include "app/banks/bank_files.h"
#include "app/banks/issued_banks.h"

namespace wm::app {

struct BankProblem {
  int line = 1;  // from 1
  QString what, remedy;
};

struct BankLook {
  std::optional<teach::Bank> bank;  // where the reader found no mistake
  std::vector<BankProblem> problems;
};

BankLook look_at_bank(const BankFile& file, const std::vector<BankRevision>& issued);

/// The line, from 1, on which the question begins; 1 where it is not there.
int line_of_question(const std::string& text, const std::string& id);
/// The question in which that line stands, or nothing.
std::string question_at_line(const std::string& text, int line);
/// The text with its own revision, the one above the questions, set to another.
std::string with_revision(const std::string& text, int revision);

}  // namespace wm::app
