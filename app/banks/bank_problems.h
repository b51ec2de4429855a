#pragma once
// What stands in the way of issuing a bank's text: the reader's mistakes, and what does not fit with what was
// issued before.
#include <QString>
#include <optional>

#include "app/banks/issued_banks.h"
#include "app/works/work_files.h"
#include "app/works/work_text.h"

namespace wm::app {

struct BankLook {
  std::optional<teach::Bank> bank;  // where the reader found no mistake
  std::vector<WorkProblem> problems;
};

BankLook look_at_bank(const WorkFile& file, const std::vector<BankRevision>& issued);

/// The line, from 1, on which the question begins; 1 where it is not there.
int line_of_question(const std::string& text, const std::string& id);
/// The question in which that line stands, or nothing.
std::string question_at_line(const std::string& text, int line);
/// With what a question begins: a bank's own revision stands above the first.
inline constexpr std::string_view question_key = "question:";

}  // namespace wm::app
