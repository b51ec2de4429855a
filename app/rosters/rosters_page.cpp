#include "app/rosters/rosters_page.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QVBoxLayout>

#include "app/print/printed.h"
#include "app/rosters/roster_paper.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QLabel* role_label(const char* role) {
  auto* label = new QLabel;
  label->setProperty("role", role);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

RostersPage::RostersPage(Session& session, QWidget* parent)
    : Page(session, parent),
      heading_(role_label("large")),
      summary_(role_label("quiet")),
      tier_boxes_(new QHBoxLayout),
      everybody_(new QCheckBox(tr("Also people with &nothing"))),
      form_(new QComboBox),
      paper_(new QComboBox),
      call_(new CallFields(session)),
      grid_(new RosterGrid) {
  heading_->setText(tr("Who may use what"));
  summary_->setObjectName("summary");
  grid_->setObjectName("roster");
  grid_->setAccessibleName(tr("Who may use what"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(22, 18, 22, 14);
  layout->setSpacing(6);
  layout->addWidget(heading_);
  layout->addWidget(summary_);
  layout->addSpacing(4);
  layout->addWidget(controls());
  layout->addWidget(call_);
  layout->addWidget(grid_, 1);
  QLabel* safe = role_label("quiet");
  safe->setText(caution());
  layout->addWidget(safe);
  connect(grid_, &RosterGrid::opened, this, [this](const PersonId& person, const TargetName& target) {
    emit go({"desk", person, target, {}, {}});
  });
}

QWidget* RostersPage::controls() {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(14);
  tier_boxes_->setSpacing(14);
  layout->addLayout(tier_boxes_);
  everybody_->setObjectName("everybody");
  connect(everybody_, &QCheckBox::toggled, this, &RostersPage::refresh);
  layout->addWidget(everybody_);
  layout->addStretch(1);
  form_->setObjectName("form");
  form_->setAccessibleName(tr("How it lies on paper"));
  form_->addItem(tr("For a door: names by machine"), static_cast<int>(RosterForm::door));
  form_->addItem(tr("For machines: a page each"), static_cast<int>(RosterForm::machine_a_page));
  form_->addItem(tr("For a desk: people by machines"), static_cast<int>(RosterForm::grid));
  form_->addItem(tr("For the wall: a card a machine"), static_cast<int>(RosterForm::card));
  call_->hide();
  connect(form_, &QComboBox::currentIndexChanged, this,
          [this] { call_->setVisible(choice().form == RosterForm::card); });
  connect(call_, &CallFields::tell, this, &Page::tell);
  connect(call_, &CallFields::tell_problem, this, &Page::tell_problem);
  layout->addWidget(form_);
  paper_->setObjectName("paper");
  paper_->setAccessibleName(tr("Paper"));
  paper_->addItem(tr("Letter"), static_cast<int>(PaperSize::letter));
  paper_->addItem(tr("A4"), static_cast<int>(PaperSize::a4));
  paper_->setCurrentIndex(static_cast<int>(paper_size()));
  connect(paper_, &QComboBox::activated, this,
          [this] { set_paper_size(static_cast<PaperSize>(paper_->currentData().toInt())); });
  layout->addWidget(paper_);
  auto* save = new KeyButton(tr("PDF"), QKeySequence::Save);
  save->setObjectName("pdf");
  connect(save, &QPushButton::clicked, this, &RostersPage::ask_for_path);
  layout->addWidget(save);
  auto* print = new KeyButton(tr("Print"), QKeySequence::Print, true);
  print->setObjectName("print");
  connect(print, &QPushButton::clicked, this, &RostersPage::print);
  layout->addWidget(print);
  return row;
}

/// One box a tier of the rulebook in force, all ticked at first; what was unticked stays so.
void RostersPage::show_tiers() {
  const std::vector<int> now = roster_tiers(session());
  if (std::ranges::equal(now, tiers_, {}, {}, &std::pair<int, QCheckBox*>::first)) return;
  for (const auto& [tier, box] : tiers_) delete box;
  tiers_.clear();
  QWidget* before = nullptr;
  for (const int tier : now) {
    auto* box = new QCheckBox(tr("Tier &%1").arg(tier));
    box->setObjectName(QString("tier_%1").arg(tier));
    box->setChecked(true);
    connect(box, &QCheckBox::toggled, this, &RostersPage::refresh);
    tier_boxes_->addWidget(box);
    box->show();  // at once, so that it can take the cursor
    if (before) setTabOrder(before, box);
    before = box;
    tiers_.emplace_back(tier, box);
  }
  if (before) setTabOrder(before, everybody_);
}

RosterChoice RostersPage::choice() const {
  RosterChoice choice{std::vector<int>(), everybody_->isChecked(),
                      static_cast<RosterForm>(form_->currentData().toInt())};
  for (const auto& [tier, box] : tiers_)
    if (box->isChecked()) choice.tiers->push_back(tier);
  return choice;
}

void RostersPage::refresh() {
  show_tiers();
  call_->refresh();
  grid_->show_table(roster_table(session(), choice()));
  summary_->setText(summary());
}

QString RostersPage::summary() const {
  const RosterTable& table = grid_->table();
  const QString day = tr("On %1, as known on %2, %3.")
                          .arg(long_day(table.at, table.zone), short_day(table.known, table.zone),
                               clock_time(table.known, table.zone));
  if (!table.rulebook) return day + " " + tr("No rulebook is in force on that day: nobody may use anything.");
  return day + " " +
         tr("Rulebook %1. People: %2. Machines: %3.")
             .arg(QString::number(*table.rulebook), QString::number(table.rows.size()),
                  QString::number(table.columns.size()));
}

void RostersPage::open(const Place& place) {
  if (place.item == "emergency") {
    form_->setCurrentIndex(form_->findData(static_cast<int>(RosterForm::card)));
    return call_->setFocus();
  }
  if (!tiers_.empty()) tiers_.front().second->setFocus(Qt::OtherFocusReason);
  const auto& rows = grid_->table().rows;
  const auto found = std::ranges::find(rows, place.person, &RosterRow::person);
  if (place.person.empty() || found == rows.end()) return;
  grid_->setCurrentIndex(grid_->model()->index(static_cast<int>(found - rows.begin()), 0));
  grid_->setFocus(Qt::OtherFocusReason);
}

void RostersPage::ask_for_path() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the roster as a PDF"),
                                                    tr("roster.pdf", "a file's name"), tr("PDF (*.pdf)"));
  if (!path.isEmpty()) save_pdf(path);
}

void RostersPage::save_pdf(const QString& path) {
  const auto pages = write_roster_pdf(grid_->table(), choice(), path, paper_size());
  if (!pages) return emit tell_problem(pages.error());
  if (!note(roster_words(grid_->table(), choice(), paper_size()))) return;
  emit tell(tr("Roster saved as %1. Pages: %2.").arg(path, QString::number(*pages)));
}

bool RostersPage::note(const RosterWords& words) {
  const auto noted = note_printed(session(), words.title, words.pages, words.words);
  if (!noted) emit tell_problem(noted.error());
  return noted.has_value();
}

void RostersPage::print() {
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const RosterWords words = roster_words(grid_->table(), choice(), paper_size());
  if (!print_roster(grid_->table(), choice(), printer, paper_size()))
    return emit tell_problem({printer.printerName().toStdString(),
                              tr("The printer did not take the roster.").toStdString(),
                              tr("See whether it is on, or save a PDF and print that.").toStdString()});
  if (note(words)) emit tell(tr("Roster sent to %1.").arg(printer.printerName()));
}

}  // namespace wm::app
