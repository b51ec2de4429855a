#include "app/passes/plan_view.h"

#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinter>
#include <algorithm>

#include "app/print/paper_words.h"
#include "app/print/printed.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/words/length_words.h"
#include "app/words/words.h"
#include "core/measure/show.h"

namespace wm::app {

void PlanView::begin(const std::string& of, const TargetName& target, const std::optional<Length>& final) {
  if (of.empty() || of != of_) clear_sizes();
  of_ = of;
  wanted_ = target;
  fill_machines(target);
  const bool inches = plain_unit() == LengthUnit::inch;
  if (marks_->text().isEmpty()) marks_->setText(length_words(inches ? "0.001 in" : "0.05 mm"));
  if (final && final_->text().isEmpty()) final_->setText(length_words(to_text(*final)));
  show_fields();
  length_->setFocus(Qt::OtherFocusReason);
}

void PlanView::refresh() {
  const TargetName chosen = machine_->currentData().toString().toStdString();
  fill_machines(chosen.empty() ? wanted_ : chosen);
  show_fields();
}

void PlanView::clear_sizes() {
  for (QLineEdit* each : {length_, width_, thickest_, uneven_, final_, hollow_}) each->clear();
  forget_what_was_seen();
}

void PlanView::forget_what_was_seen() {
  for (QCheckBox* each : {crown_, fence_}) {
    const QSignalBlocker quiet(each);
    each->setChecked(false);
  }
  measured_->clear();
}

/// How well a card suits what is asked about: its own target best, then its class; of these a planer's, since
/// the plan of a piece's thickness is what is asked for most. 0: not at all, since one machine's limits say
/// nothing of another's.
static int suits(const IssuedCard& card, const TargetName& wanted) {
  if (card.target == wanted) return 3;
  if (class_of(card.target) != class_of(wanted)) return 0;
  return std::holds_alternative<PlanerCard>(card.card) ? 2 : 1;
}

void PlanView::fill_machines(const TargetName& wanted) {
  const QSignalBlocker quiet(machine_);
  const QVariant before = machine_->currentData();
  cards_ = issued_cards(session_);
  machine_->clear();
  for (const IssuedCard& each : cards_)
    machine_->addItem(target_label(each.target), QString::fromStdString(each.target));
  const auto best =
      std::ranges::max_element(cards_, {}, [&](const IssuedCard& c) { return suits(c, wanted); });
  const bool any = best != cards_.end() && suits(*best, wanted) > 0;
  machine_->setCurrentIndex(any ? static_cast<int>(best - cards_.begin()) : -1);
  if (machine_->currentData() != before) forget_what_was_seen();
}

const IssuedCard* PlanView::card() const {
  const int at = machine_->currentIndex();
  return at < 0 || static_cast<std::size_t>(at) >= cards_.size() ? nullptr
                                                                 : &cards_[static_cast<std::size_t>(at)];
}

PlanSizes PlanView::sizes() const {
  return {length_->text(),     width_->text(),
          thickest_->text(),   uneven_->text(),
          final_->text(),      marks_->text(),
          hollow_->text(),     joint_->currentIndex() == 0 ? Joint::face : Joint::edge,
          crown_->isChecked(), fence_->isChecked(),
          measured_->text()};
}

/// What the chosen card asks for, and no more.
void PlanView::show_fields() {
  const IssuedCard* chosen = card();
  const bool planer = chosen && std::holds_alternative<PlanerCard>(chosen->card);
  for (const auto& [field, row] : rows_) {
    const bool of_planer = field == uneven_ || field == final_ || field == marks_ || field == measured_;
    row->setVisible(chosen && (field == hollow_ ? !planer : !of_planer || planer));
  }
  joint_row_->setVisible(chosen && !planer);
  QStringList words;
  if (chosen)
    for (const auto& [name, value] : card_lines(chosen->card))
      words << tr("%1: %2", "a line of a limits card, its value").arg(name, value);
  if (chosen) words << card_caution();
  card_words_->setText(words.join('\n'));
  show_plan();
}

QString PlanView::why_no_card() const {
  if (!wanted_.empty())
    return tr("%1 has no limits card. A manager issues one on the page Machines.", "a machine")
        .arg(target_label(wanted_));
  return cards_.empty() ? tr("No machine has a limits card yet. A manager issues one on the page Machines.")
                        : tr("Choose the machine: the plan goes by its limits card.");
}

void PlanView::show_plan() {
  plan_.reset();
  const IssuedCard* chosen = card();
  title_->setText(tr("Pass plan"));
  if (!chosen) {
    said_->setText(why_no_card());
  } else if (!all_typed(chosen->card, sizes())) {
    said_->setText(tr("Type the sizes, such as 1 3/8, 0.992 or 25.2 mm."));
  } else if (auto plan = shown_plan(*chosen, sizes())) {
    plan_ = *std::move(plan);
    title_->setText(tr("Pass plan: %1").arg(plan_->title));
    said_->setText(plan_->sentences.join('\n'));
  } else {
    said_->setText(tr("No plan. %1").arg(problem_sentence(plan.error())));
  }
  said_->setFont(type(TypeSize::body, !plan_));
  show_lines(plan_ ? plan_->lines : std::vector<PassLine>());
  lines_->setVisible(plan_ && !plan_->lines.empty());
  drawing_->setVisible(plan_.has_value());
  drawing_->show_picture(plan_ ? std::optional(plan_->picture) : std::nullopt);
  const bool planer = chosen && std::holds_alternative<PlanerCard>(chosen->card);
  cautions_->setText((plan_ ? plan_->cautions : plan_cautions(planer)).join('\n'));
  pdf_->setEnabled(plan_.has_value());
  print_->setEnabled(plan_.has_value());
}

void PlanView::show_lines(const std::vector<PassLine>& lines) {
  lines_->setRowCount(static_cast<int>(lines.size()));
  int row = 0;
  for (const PassLine& line : lines) {
    int column = 0;
    for (const QString* each : {&line.how, &line.setting, &line.wheel, &line.most, &line.measure})
      lines_->setItem(row, column++, new QTableWidgetItem(*each));
    lines_->item(row, 0)->setText(tr("%1. %2", "a number, what is done").arg(row + 1).arg(line.how));
    ++row;
  }
  lines_->setColumnHidden(2, std::ranges::all_of(lines, [](const PassLine& l) { return l.wheel.isEmpty(); }));
}

PlanPaper PlanView::paper() const {
  const QString of =
      tr("Limits card of %1, revision %2").arg(target_label(card()->target)).arg(card()->revision);
  return plan_paper(*plan_, QString::fromStdString(session_.store().details().name), of, paper_size());
}

void PlanView::ask_for_path() {
  if (!plan_) return;
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the pass plan as a PDF"),
                                                    tr("pass-plan.pdf", "a file's name"), tr("PDF (*.pdf)"));
  if (!path.isEmpty()) save_pdf(path);
}

void PlanView::save_pdf(const QString& path) {
  if (!plan_) return;
  const PlanPaper out = paper();
  const auto pages = write_pdf(path, out.text, out.pages, out.draw);
  if (!pages) return emit tell_problem(pages.error());
  note(out);
  emit tell(tr("Pass plan saved as %1.").arg(path));
}

void PlanView::print() {
  if (!plan_) return;
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const PlanPaper out = paper();
  set_up(printer, out.text);
  if (!paint_paper(printer, out.text, out.pages, out.draw))
    return emit tell_problem({printer.printerName().toStdString(),
                              tr("The printer did not take the plan.").toStdString(),
                              tr("See whether it is on, or save a PDF and print that.").toStdString()});
  note(out);
  emit tell(tr("Pass plan sent to %1.").arg(printer.printerName()));
}

void PlanView::note(const PlanPaper& paper) {
  const auto noted =
      note_printed(session_, paper.text.title, paper.pages, paper_words(paper.text, paper.pages, paper.draw));
  if (!noted) emit tell_problem(noted.error());
}

}  // namespace wm::app
