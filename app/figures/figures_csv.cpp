#include "app/figures/figures_csv.h"

#include <QFile>
#include <QSaveFile>
#include <array>
#include <charconv>

#include "app/figures/agreed_words.h"
#include "app/figures/figure_words.h"
#include "app/figures/figures_views.h"
#include "db/export/csv.h"

namespace wm::app {
namespace {

/// What a row is of, and its figures; what does not belong to its kind stays empty.
struct CsvRow {
  std::string kind, quiz, revision, language, topic, question, choice, words, right_choice;
  std::string attempts, right, passed, pass_low, pass_high;
  std::string mean, deviation, kr20, kr21, alpha, standard_error;
  std::string share, with_total, with_rest;
  std::string sheet, line, performances, assessors, marked, alike, kappa, kappa_low, kappa_high;
  std::string missing;
};

std::string plain(double value) {
  std::array<char, 32> text;
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.data(), end};
}

/// The figure, or nothing and why in `row.missing`.
std::string csv_figure(const teach::Figure& figure, const std::string& name, CsvRow& row) {
  if (figure) return plain(*figure);
  row.missing += (row.missing.empty() ? "" : "; ") + name + ": " + figure_cell(figure).toStdString();
  return {};
}

CsvRow csv_group(const std::string& quiz, const teach::PaperFigures& figures) {
  CsvRow row;
  row.kind = "group";
  row.quiz = quiz;
  row.attempts = std::to_string(figures.people);
  row.passed = std::to_string(figures.passed);
  if (figures.passing) {
    row.pass_low = plain(figures.passing->low);
    row.pass_high = plain(figures.passing->high);
  }
  row.mean = csv_figure(figures.mean, "mean", row);
  row.deviation = csv_figure(figures.deviation, "deviation", row);
  row.kr20 = csv_figure(figures.kr20, "kr20", row);
  row.kr21 = csv_figure(figures.kr21, "kr21", row);
  row.alpha = csv_figure(figures.alpha, "alpha", row);
  row.standard_error = csv_figure(figures.standard_error, "standard_error", row);
  return row;
}

CsvRow csv_question(const teach::BankFigures& bank, const teach::QuestionFigures& figures) {
  const teach::Wording* wording = shown_wording(teach::question_of(bank, figures.question, figures.revision));
  CsvRow row;
  row.kind = "question";
  row.quiz = bank.bank;
  row.revision = std::to_string(figures.revision);
  row.topic = figures.topic;
  row.question = figures.question;
  row.words = wording ? wording->text : "";
  row.attempts = std::to_string(figures.asked);
  row.right = std::to_string(figures.right);
  row.share = csv_figure(figures.difficulty, "share", row);
  row.with_total = csv_figure(figures.with_total, "with_total", row);
  row.with_rest = csv_figure(figures.with_rest, "with_rest", row);
  return row;
}

CsvRow csv_choice(const teach::BankFigures& bank, const teach::QuestionFigures& figures, std::size_t i) {
  const teach::Wording* wording = shown_wording(teach::question_of(bank, figures.question, figures.revision));
  const teach::ChoiceFigures& choice = figures.choices[i];
  CsvRow row;
  row.kind = "choice";
  row.quiz = bank.bank;
  row.revision = std::to_string(figures.revision);
  row.topic = figures.topic;
  row.question = figures.question;
  row.choice = std::to_string(i + 1);
  row.words = choice_words(wording, i).toStdString();
  row.right_choice = choice.right ? "yes" : "no";
  row.attempts = std::to_string(choice.chosen);
  row.share = plain(static_cast<double>(choice.chosen) / static_cast<double>(figures.asked));
  row.with_rest = csv_figure(choice.pull, "with_rest", row);
  return row;
}

/// Of a sheet, or of one of its lines.
CsvRow csv_agreed(const SheetAgreed& sheet, const Agreed& agreed) {
  CsvRow row;
  row.kind = "assessors";
  row.sheet = sheet.sheet;
  row.revision = std::to_string(sheet.revision);
  row.performances = std::to_string(sheet.performances);
  row.assessors = std::to_string(sheet.assessors);
  row.marked = std::to_string(agreed.things);
  row.alike = std::to_string(agreed.alike);
  if (const QString none = no_number_words(agreed); !none.isEmpty()) {
    row.missing = "kappa: " + none.toStdString();
    return row;
  }
  row.kappa = plain(agreed.kappa->kappa);
  if (agreed.kappa->interval) {
    row.kappa_low = plain(agreed.kappa->interval->low);
    row.kappa_high = plain(agreed.kappa->interval->high);
  }
  return row;
}

CsvRow csv_agreed_line(const SheetAgreed& sheet, const LineAgreed& line) {
  CsvRow row = csv_agreed(sheet, line.agreed);
  row.kind = "assessors_line";
  row.line = std::to_string(line.line + 1);
  row.words = agreed_line(line).toStdString();
  return row;
}

std::vector<std::string> cells_of(const CsvRow& r) {
  using db::as_text;
  return {r.kind,      as_text(r.quiz),  r.revision,     r.language,   as_text(r.topic), r.question,
          r.choice,    as_text(r.words), r.right_choice, r.attempts,   r.right,          r.passed,
          r.pass_low,  r.pass_high,      r.mean,         r.deviation,  r.kr20,           r.kr21,
          r.alpha,     r.standard_error, r.share,        r.with_total, r.with_rest,      as_text(r.sheet),
          r.line,      r.performances,   r.assessors,    r.marked,     r.alike,          r.kappa,
          r.kappa_low, r.kappa_high,     r.missing};
}

const std::vector<std::string> csv_titles = {
    "kind",       "quiz",         "revision",  "language",   "topic",        "question",       "choice",
    "words",      "right_choice", "attempts",  "right",      "passed",       "pass_low",       "pass_high",
    "mean",       "deviation",    "kr20",      "kr21",       "alpha",        "standard_error", "share",
    "with_total", "with_rest",    "sheet",     "line",       "performances", "assessors",      "marked",
    "alike",      "kappa",        "kappa_low", "kappa_high", "missing"};

void add_groups(const teach::BankFigures& bank, std::string& text) {
  const auto add = [&](CsvRow row) { text += db::csv_line(cells_of(row)); };
  add(csv_group(bank.bank, bank.all));
  for (const auto& [revision, figures] : bank.by_revision) {
    CsvRow row = csv_group(bank.bank, figures);
    row.revision = std::to_string(revision);
    add(row);
  }
  for (const auto& [language, figures] : bank.by_language) {
    CsvRow row = csv_group(bank.bank, figures);
    row.language = language;
    add(row);
  }
  for (const auto& [topic, figures] : bank.by_topic) {
    CsvRow row = csv_group(bank.bank, figures);
    row.topic = topic;
    row.passed = row.pass_low = row.pass_high = "";
    add(row);
  }
}

}  // namespace

std::string figures_csv(const std::vector<teach::BankFigures>& banks,
                        const std::vector<SheetAgreed>& agreed) {
  std::string text = "\xEF\xBB\xBF" + db::csv_line(csv_titles);
  for (const teach::BankFigures& bank : banks) {
    add_groups(bank, text);
    for (const teach::QuestionFigures* each : in_order_of_bank(bank)) {
      text += db::csv_line(cells_of(csv_question(bank, *each)));
      for (std::size_t i = 0; i < each->choices.size(); ++i)
        text += db::csv_line(cells_of(csv_choice(bank, *each, i)));
    }
  }
  for (const SheetAgreed& sheet : agreed) {
    text += db::csv_line(cells_of(csv_agreed(sheet, sheet.all)));
    for (const LineAgreed& line : sheet.lines) text += db::csv_line(cells_of(csv_agreed_line(sheet, line)));
  }
  return text;
}

Expected<void> write_figures_csv(const std::vector<teach::BankFigures>& banks,
                                 const std::vector<SheetAgreed>& agreed, const QString& path) {
  const std::string text = figures_csv(banks, agreed);
  QSaveFile file(path);
  if (file.open(QIODevice::WriteOnly) && file.write(QByteArray::fromStdString(text)) >= 0 && file.commit())
    return {};
  return tl::unexpected(Problem{path.toStdString(), file.errorString().toStdString(),
                                "Choose a place where you may write and that is not full"});
}

}  // namespace wm::app
