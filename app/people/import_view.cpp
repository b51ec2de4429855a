#include "app/people/import_view.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

using namespace db::import;

constexpr int most_previewed = 200;

QString shown(const std::string& text) { return QString::fromStdString(text); }

QString capital_first(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

QComboBox* box(const char* name, const QString& read_as) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  box->setAccessibleName(read_as);
  return box;
}

QString fate_words(RowFate fate) {
  switch (fate) {
    case RowFate::enters:
      return ImportView::tr("enters");
    case RowFate::already_here:
      return ImportView::tr("here already");
    case RowFate::bad:
      return ImportView::tr("wrong");
  }
  return {};
}

}  // namespace

ImportView::ImportView(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(22, 18, 20, 14);
  across->setSpacing(20);
  across->addWidget(left_side());
  across->addWidget(right_side(), 1);
}

QWidget* ImportView::left_side() {
  auto* side = new QWidget;
  side->setFixedWidth(340);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(role_label("large", tr("Take in a CSV file")));
  choose_ = new KeyButton(tr("Choose the file"), QKeySequence::Open);
  choose_->setObjectName("choose");
  connect(choose_, &QPushButton::clicked, this, &ImportView::ask_for_file);
  layout->addWidget(choose_);
  file_ = role_label("quiet", tr("No file yet."));
  layout->addWidget(file_);

  kind_ = box("file_kind", tr("What the file holds"));
  kind_->addItem(tr("People"), static_cast<int>(FileKind::people));
  kind_->addItem(tr("Training history"), static_cast<int>(FileKind::history));
  kind_->addItem(tr("Units"), static_cast<int>(FileKind::machines));
  kind_->addItem(tr("Assessors' hours"), static_cast<int>(FileKind::hours));
  kind_->addItem(tr("Bookings"), static_cast<int>(FileKind::bookings));
  encoding_ = box("encoding", tr("Letters"));
  encoding_->addItem(tr("as guessed"), -1);
  encoding_->addItem("UTF-8", static_cast<int>(Encoding::utf8));
  encoding_->addItem("Windows-1252", static_cast<int>(Encoding::windows_1252));
  separator_ = box("separator", tr("Between columns"));
  separator_->addItem(tr("as guessed"), QString());
  separator_->addItem(tr("comma"), ",");
  separator_->addItem(tr("semicolon"), ";");
  separator_->addItem(tr("tab"), "\t");
  order_ = box("order", tr("3/4/2026 is"));
  order_->addItem(tr("not said"), -1);
  order_->addItem(tr("4 March"), static_cast<int>(DateOrder::month_first));
  order_->addItem(tr("3 April"), static_cast<int>(DateOrder::day_first));
  auto* how = new QFormLayout;
  how->addRow(tr("It holds"), kind_);
  how->addRow(tr("Letters"), encoding_);
  how->addRow(tr("Between columns"), separator_);
  how->addRow(tr("3/4/2026 is"), order_);
  layout->addLayout(how);
  connect(kind_, &QComboBox::activated, this, &ImportView::read);
  connect(encoding_, &QComboBox::activated, this, &ImportView::read);
  connect(separator_, &QComboBox::activated, this, &ImportView::read);
  connect(order_, &QComboBox::activated, this, &ImportView::plan);

  layout->addWidget(role_label("heading", tr("Which column is what")));
  auto* list = new QWidget;
  fields_ = new QFormLayout(list);
  fields_->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setWidget(list);
  layout->addWidget(scroll, 1);
  return side;
}

QWidget* ImportView::right_side() {
  auto* side = new QWidget;
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  summary_ = role_label("body", tr("Nothing is entered before you have seen it."));
  summary_->setObjectName("summary");
  layout->addWidget(summary_);
  preview_ = new QTableWidget;
  preview_->setObjectName("preview");
  preview_->setAccessibleName(tr("What would be entered"));
  preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  preview_->setSelectionBehavior(QAbstractItemView::SelectRows);
  preview_->setTabKeyNavigation(false);
  preview_->setShowGrid(false);
  preview_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  preview_->verticalHeader()->hide();
  preview_->verticalHeader()->setDefaultSectionSize(row_height() - 8);
  layout->addWidget(preview_, 3);
  layout->addWidget(role_label("heading", tr("Rows that are wrong")));
  problems_ = new QListWidget;
  problems_->setObjectName("bad_rows");
  problems_->setAccessibleName(tr("Rows that are wrong"));
  problems_->setWordWrap(true);
  problems_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  problems_->setSpacing(3);
  layout->addWidget(problems_, 2);
  problem_ = role_label("problem");
  problem_->setObjectName("problem");
  problem_->hide();
  layout->addWidget(problem_);
  run_ = new KeyButton(tr("Enter all of it"), QKeySequence("Ctrl+Return"), true);
  run_->setObjectName("run");
  run_->setEnabled(false);
  connect(run_, &QPushButton::clicked, this, &ImportView::run);
  auto* leave = new KeyButton(tr("Leave it"), QKeySequence("Esc"));
  leave->setObjectName("leave");
  connect(leave, &QPushButton::clicked, this, &ImportView::left);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(run_);
  buttons->addWidget(leave);
  buttons->addStretch(1);
  layout->addLayout(buttons);
  return side;
}

void ImportView::take_cursor() { choose_->setFocus(Qt::OtherFocusReason); }

void ImportView::ask_for_file() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Take in a CSV file"), {}, tr("Tables (*.csv *.txt *.tsv)"));
  if (!path.isEmpty()) open_file(path);
}

void ImportView::open_file(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    table_.reset();
    return show_problems({tr("%1 can't be read: %2.").arg(path, file.errorString())});
  }
  path_ = path;
  bytes_ = file.readAll().toStdString();
  file_->setText(QFileInfo(path).fileName());
  read();
}

FileKind ImportView::kind() const { return static_cast<FileKind>(kind_->currentData().toInt()); }

ReadOptions ImportView::read_options() const {
  ReadOptions options;
  if (encoding_->currentIndex() > 0)
    options.encoding = static_cast<Encoding>(encoding_->currentData().toInt());
  if (separator_->currentIndex() > 0)
    options.separator = separator_->currentData().toString().at(0).toLatin1();
  return options;
}

PlanOptions ImportView::plan_options() const {
  PlanOptions options;
  if (order_->currentIndex() > 0) options.date_order = static_cast<DateOrder>(order_->currentData().toInt());
  if (session_.seated()) options.by = session_.seated()->id;
  return options;
}

Mapping ImportView::mapping() const {
  Mapping mapping;
  for (const auto& [field, column] : columns_)
    if (column->currentData().toInt() >= 0) mapping[field] = column->currentData().toInt();
  return mapping;
}

void ImportView::read() {
  if (path_.isEmpty()) return;
  auto table = read_table(bytes_, read_options());
  plan_.reset();
  if (!table) {
    table_.reset();
    show_mapping();
    return show_problems({problem_sentence(table.error())});
  }
  table_ = std::move(*table);
  show_mapping();
  plan();
}

/// A choice of columns for each field, guessed from the header.
void ImportView::show_mapping() {
  while (fields_->rowCount() > 0) fields_->removeRow(0);
  columns_.clear();
  if (!table_) return;
  const Mapping guess = guess_mapping(*table_, kind());
  for (const Field& field : fields_of(kind())) {
    auto* column = box(("column_" + field.key).c_str(), shown(field.meaning));
    column->addItem(field.needed ? tr("not chosen") : tr("not in the file"), -1);
    for (std::size_t i = 0; i < table_->header.size(); ++i)
      column->addItem(shown(table_->header[i]), static_cast<int>(i));
    const auto found = guess.find(field.key);
    column->setCurrentIndex(found == guess.end() ? 0 : found->second + 1);
    connect(column, &QComboBox::activated, this, &ImportView::plan);
    auto* name = role_label("quiet", shown(field.meaning));
    name->setFixedWidth(150);
    fields_->addRow(name, column);
    columns_[field.key] = column;
  }
}

void ImportView::plan() {
  if (!table_) return;
  plan_.reset();
  problem_->hide();
  std::vector<QString> wrong;
  for (const Problem& problem : mistakes_in(mapping(), *table_, kind()))
    wrong.push_back(problem_sentence(problem));
  if (!wrong.empty()) return show_problems(wrong);
  plan_ = db::import::plan(kind(), *table_, mapping(), plan_options(), Ground::of(session_.store()));
  show_rows(*plan_);
  if (plan_->question)
    wrong.push_back(tr("Line %1: %2 can be two dates. Say at the left which number is the month.")
                        .arg(QString::number(plan_->question->line), shown(plan_->question->text)));
  for (const RowProblem& row : plan_->problems)
    wrong.push_back(tr("%1: %2", "line and column, what is wrong")
                        .arg(capital_first(shown(row.problem.where)), problem_sentence(row.problem)));
  show_problems(wrong);
}

void ImportView::show_rows(const ImportPlan& plan) {
  const int rows = std::min(most_previewed, static_cast<int>(plan.rows.size()));
  preview_->clear();
  preview_->setRowCount(rows);
  preview_->setColumnCount(static_cast<int>(plan.titles.size()) + 3);
  QStringList titles{tr("Line"), tr("What comes of it")};
  for (const std::string& title : plan.titles) titles << shown(title);
  preview_->setHorizontalHeaderLabels(titles << tr("Remark"));
  for (int i = 0; i < rows; ++i) {
    const PlannedRow& row = plan.rows[static_cast<std::size_t>(i)];
    QStringList cells{QString::number(row.line), fate_words(row.fate)};
    for (const std::string& cell : row.cells) cells << shown(cell);
    while (cells.size() < titles.size() - 1) cells << QString();
    cells << shown(row.remark);
    for (int c = 0; c < cells.size() && c < preview_->columnCount(); ++c)
      preview_->setItem(i, c, new QTableWidgetItem(cells[c]));
  }
  preview_->resizeColumnsToContents();
}

void ImportView::show_problems(const std::vector<QString>& lines) {
  problems_->clear();
  for (const QString& line : lines) problems_->addItem(line);
  const bool ready = plan_ && plan_->ready() && !plan_->commands.empty();
  run_->setEnabled(ready);
  if (!plan_) {
    preview_->clear();
    preview_->setRowCount(0);
    return summary_->setText(tr("Nothing can be entered yet: see what is wrong below."));
  }
  const auto enters = std::ranges::count(plan_->rows, RowFate::enters, &PlannedRow::fate);
  summary_->setText(
      tr("Rows that enter: %1. Here already: %2. Wrong: %3. All of it is entered, or nothing.")
          .arg(QString::number(enters), QString::number(plan_->already_here), QString::number(lines.size())));
}

void ImportView::run() {
  if (!plan_ || !plan_->ready()) return;
  const auto enters = std::ranges::count(plan_->rows, RowFate::enters, &PlannedRow::fate);
  const auto result = session_.take_in({*plan_});
  if (!result) {
    problem_->setText(problem_sentence(result.error()));
    problem_->show();
    return;
  }
  emit done(tr("Taken in from %1. Rows: %2.").arg(QFileInfo(path_).fileName(), QString::number(enters)));
}

}  // namespace wm::app
