#include "app/passes/plan_view.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPrintDialog>
#include <QPrinter>
#include <QVBoxLayout>
#include <algorithm>

#include "app/print/paper_words.h"
#include "app/print/printed.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/length_words.h"
#include "app/words/words.h"
#include "core/measure/show.h"

namespace wm::app {

PlanView::PlanView(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(18, 14, 18, 12);
  down->setSpacing(8);
  title_ = role_label("large");
  title_->setObjectName("plan_title");
  down->addWidget(title_);
  auto* across = new QHBoxLayout;
  across->setSpacing(18);
  across->addWidget(make_fields(), 2);
  across->addWidget(make_plan(), 5);
  down->addLayout(across, 1);
  down->addWidget(make_buttons());
}

QLineEdit* PlanView::size_field(const QString& words, const char* name) {
  auto* field = new QLineEdit;
  field->setObjectName(name);
  field->setAccessibleName(words);
  auto* row = new QWidget;
  auto* down = new QVBoxLayout(row);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(1);
  down->addWidget(role_label("quiet", words));
  down->addWidget(field);
  rows_.emplace_back(field, row);
  connect(field, &QLineEdit::textEdited, this, &PlanView::show_plan);
  return field;
}

QWidget* PlanView::make_fields() {
  auto* box = new QWidget;
  box->setMaximumWidth(260);
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(5);
  machine_ = new QComboBox;
  machine_->setObjectName("plan_machine");
  machine_->setAccessibleName(tr("Machine"));
  down->addWidget(role_label("quiet", tr("Machine")));
  down->addWidget(machine_);
  joint_ = new QComboBox;
  joint_->setObjectName("plan_joint");
  joint_->setAccessibleName(tr("Face or edge"));
  joint_->addItem(tr("a face"));
  joint_->addItem(tr("an edge"));
  crown_ = new QCheckBox(tr("&Crown up: it does not rock"));
  crown_->setObjectName("plan_crown");
  fence_ = new QCheckBox(tr("&Fence at 90°, tried with a square"));
  fence_->setObjectName("plan_fence");
  length_ = size_field(tr("Length"), "plan_length");
  width_ = size_field(tr("Width"), "plan_width");
  thickest_ = size_field(tr("Thickest place, as measured"), "plan_thickest");
  uneven_ = size_field(tr("Where nobody measured, thicker by"), "plan_uneven");
  final_ = size_field(tr("Final thickness"), "plan_final");
  marks_ = size_field(tr("The caliper reads to"), "plan_marks");
  hollow_ = size_field(tr("Hollow: the gap under a straightedge"), "plan_hollow");
  for (const auto& [field, row] : rows_) down->addWidget(row);
  joint_row_ = new QWidget;
  auto* rest = new QVBoxLayout(joint_row_);
  rest->setContentsMargins(0, 4, 0, 0);
  for (QWidget* each : std::initializer_list<QWidget*>{joint_, crown_, fence_}) rest->addWidget(each);
  down->addWidget(joint_row_);
  card_words_ = role_label("quiet");
  card_words_->setObjectName("plan_card");
  down->addSpacing(4);
  down->addWidget(card_words_);
  down->addStretch(1);
  connect(machine_, &QComboBox::currentIndexChanged, this, &PlanView::show_fields);
  connect(joint_, &QComboBox::currentIndexChanged, this, &PlanView::show_plan);
  for (QCheckBox* each : {crown_, fence_}) connect(each, &QCheckBox::toggled, this, &PlanView::show_plan);
  return box;
}

QWidget* PlanView::make_plan() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(8);
  said_ = role_label("body");
  said_->setObjectName("plan_said");
  lines_ = new QTableWidget(0, 5);
  lines_->setObjectName("plan_lines");
  lines_->setAccessibleName(tr("The passes, one by one"));
  lines_->setHorizontalHeaderLabels(
      {tr("How"), tr("Set to"), tr("Wheel, divisions"), tr("Cuts at most"), tr("Measure")});
  lines_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  lines_->setSelectionBehavior(QAbstractItemView::SelectRows);
  lines_->setWordWrap(true);
  lines_->setShowGrid(false);
  lines_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  lines_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  lines_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  lines_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  lines_->verticalHeader()->hide();
  drawing_ = new PlanDrawing;
  cautions_ = role_label("quiet");
  cautions_->setObjectName("plan_cautions");
  down->addWidget(said_);
  down->addWidget(lines_, 5);
  down->addWidget(drawing_, 4);
  down->addWidget(cautions_);
  down->addStretch(0);
  return box;
}

QWidget* PlanView::make_buttons() {
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(10);
  auto* back = new KeyButton(tr("Back to the sheet"), QKeySequence("Esc"));
  back->setObjectName("plan_back");
  pdf_ = new KeyButton(tr("PDF"), QKeySequence::Save);
  pdf_->setObjectName("plan_pdf");
  print_ = new KeyButton(tr("Print"), QKeySequence::Print);
  print_->setObjectName("plan_print");
  across->addWidget(back);
  across->addStretch(1);
  across->addWidget(pdf_);
  across->addWidget(print_);
  connect(back, &QPushButton::clicked, this, &PlanView::left);
  connect(pdf_, &QPushButton::clicked, this, &PlanView::ask_for_path);
  connect(print_, &QPushButton::clicked, this, &PlanView::print);
  return box;
}

void PlanView::begin(const TargetName& target, const std::optional<Length>& final) {
  fill_machines(target);
  const bool inches = plain_unit() == LengthUnit::inch;
  if (uneven_->text().isEmpty()) uneven_->setText(inches ? "0 in" : "0 mm");
  if (marks_->text().isEmpty()) marks_->setText(length_words(inches ? "0.001 in" : "0.05 mm"));
  if (final && final_->text().isEmpty()) final_->setText(length_words(to_text(*final)));
  show_fields();
  length_->setFocus(Qt::OtherFocusReason);
}

void PlanView::refresh() {
  fill_machines(machine_->currentData().toString().toStdString());
  show_fields();
}

/// How well a card suits what is asked about: its own target best, then its class; of these a planer's, since
/// the plan of a piece's thickness is what is asked for most.
static int suits(const IssuedCard& card, const TargetName& wanted) {
  const int planer = std::holds_alternative<PlanerCard>(card.card) ? 1 : 0;
  return card.target == wanted ? 4 : class_of(card.target) == class_of(wanted) ? 2 + planer : planer;
}

void PlanView::fill_machines(const TargetName& wanted) {
  const QSignalBlocker quiet(machine_);
  cards_ = issued_cards(session_);
  machine_->clear();
  for (const IssuedCard& each : cards_)
    machine_->addItem(target_label(each.target), QString::fromStdString(each.target));
  const auto best =
      std::ranges::max_element(cards_, {}, [&](const IssuedCard& c) { return suits(c, wanted); });
  machine_->setCurrentIndex(cards_.empty() ? -1 : static_cast<int>(best - cards_.begin()));
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
          crown_->isChecked(), fence_->isChecked()};
}

/// What the chosen card asks for, and no more.
void PlanView::show_fields() {
  const IssuedCard* chosen = card();
  const bool planer = chosen && std::holds_alternative<PlanerCard>(chosen->card);
  for (const auto& [field, row] : rows_) {
    const bool of_planer = field == uneven_ || field == final_ || field == marks_;
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

void PlanView::show_plan() {
  plan_.reset();
  const IssuedCard* chosen = card();
  title_->setText(tr("Pass plan"));
  if (!chosen) {
    said_->setText(tr("No machine has a limits card yet. A manager issues one on the page Machines."));
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
  lines_->setVisible(plan_.has_value());
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
