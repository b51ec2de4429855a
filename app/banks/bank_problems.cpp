#include "app/banks/bank_problems.h"

#include <QCoreApplication>
#include <algorithm>
#include <sstream>

#include "core/teach/bank_changes.h"
#include "core/teach/bank_text.h"

namespace wm::app {
namespace {

struct BankProblems {
  Q_DECLARE_TR_FUNCTIONS(wm::app::BankProblems)
};

constexpr std::string_view picture_key = "picture:";

void add_pictures(const WorkFile& file, BankLook& look) {
  for (const std::string& name : pictures_named(file.text)) {
    if (std::ranges::find(file.pictures, name, &db::Enclosure::name) != file.pictures.end()) continue;
    const int line = first_line(file.text, [&](const std::string& l) {
      return l.starts_with(picture_key) && trimmed_after(l, picture_key) == name;
    });
    look.problems.push_back({line,
                             BankProblems::tr("The picture %1 is missing").arg(QString::fromStdString(name)),
                             BankProblems::tr("Put it beside the file and open that again")});
  }
}

void add_revisions(const WorkFile& file, const std::vector<BankRevision>& issued, BankLook& look) {
  const teach::Bank& bank = *look.bank;
  if (auto problem = issued_already(file.text, bank.revision, highest_issued(issued, bank.name)))
    look.problems.push_back(*std::move(problem));
  const BankRevision* before = current_of(issued, bank.name);
  if (!before) return;
  for (const std::string& id : teach::changes(before->bank, bank).uncounted)
    look.problems.push_back(
        {line_of_question(file.text, id),
         BankProblems::tr("The question %1 has changed and keeps its revision")
             .arg(QString::fromStdString(id)),
         BankProblems::tr("Write revision: %1 under it, so that answers to the two are told apart")
             .arg(teach::question_of(before->bank, id)->revision + 1)});
}

}  // namespace

BankLook look_at_bank(const WorkFile& file, const std::vector<BankRevision>& issued) {
  BankLook look;
  auto bank = teach::read_bank(file.text);
  if (bank) {
    look.bank = std::move(*bank);
    add_revisions(file, issued, look);
  } else {
    for (const Problem& each : bank.error()) look.problems.push_back(work_problem(each));
  }
  add_pictures(file, look);
  std::ranges::stable_sort(look.problems, {}, &WorkProblem::line);
  return look;
}

int line_of_question(const std::string& text, const std::string& id) {
  return first_line(text, [&](const std::string& line) {
    return line.starts_with(question_key) && trimmed_after(line, question_key) == id;
  });
}

std::string question_at_line(const std::string& text, int line) {
  std::istringstream lines(text);
  std::string id;
  int number = 0;
  for (std::string each; ++number <= line && std::getline(lines, each);)
    if (each.starts_with(question_key)) id = trimmed_after(each, question_key);
  return id;
}

}  // namespace wm::app
