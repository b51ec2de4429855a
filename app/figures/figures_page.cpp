#include "app/figures/figures_page.h"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/figures/figure_words.h"
#include "app/figures/figures_csv.h"
#include "app/figures/figures_paper.h"
#include "app/figures/figures_views.h"
#include "app/figures/marked_twice.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

const QString first_row = QStringLiteral("look first");
const QString agreed_row = QStringLiteral("assessors");

}  // namespace

FiguresPage::FiguresPage(Session& session, QWidget* parent)
    : Page(session, parent),
      summary_(role_label("quiet")),
      list_(new ListView({{tr("Figures of"), 0}})),
      view_(new QScrollArea) {
  behind_.setMaxThreadCount(1);
  summary_->setObjectName("summary");
  list_->setObjectName("list");
  list_->setAccessibleName(tr("Figures of"));
  list_->setFixedWidth(230);
  view_->setObjectName("figures");
  view_->setAccessibleName(tr("Figures"));
  view_->setWidgetResizable(true);
  view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  view_->setFocusPolicy(Qt::StrongFocus);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(22, 18, 20, 14);
  layout->setSpacing(10);
  layout->addWidget(head());
  auto* across = new QHBoxLayout;
  across->setSpacing(20);
  across->addWidget(list_);
  across->addWidget(view_, 1);
  layout->addLayout(across, 1);
  connect(list_, &ListView::choice_changed, this, &FiguresPage::show_chosen);
}

FiguresPage::~FiguresPage() {
  behind_.clear();
  behind_.waitForDone();
}

QWidget* FiguresPage::head() {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(14);
  layout->addWidget(summary_, 1);
  layout->addWidget(button("csv", tr("CSV"), QKeySequence("Ctrl+Shift+S"), &FiguresPage::ask_for_csv));
  layout->addWidget(button("pdf", tr("PDF"), QKeySequence::Save, &FiguresPage::ask_for_pdf));
  layout->addWidget(button("print", tr("Print"), QKeySequence::Print, &FiguresPage::print));
  return row;
}

KeyButton* FiguresPage::button(const char* name, const QString& words, const QKeySequence& key,
                               void (FiguresPage::*act)()) {
  auto* made = new KeyButton(words, key);
  made->setObjectName(name);
  connect(made, &QPushButton::clicked, this, act);
  buttons_.push_back(made);
  return made;
}

bool FiguresPage::may_look() const {
  return session().role() == db::Role::instructor || session().role() == db::Role::manager;
}

void FiguresPage::refresh() {
  if (!may_look()) {
    texts_.reset();
    ++asked_;
    working_ = false;
    figures_.clear();
    marked_.clear();
    agreed_.clear();
    show_rows();
    return show_words(tr("Figures show which answers are right. They open for instructors and managers."));
  }
  std::vector<MarkedTwice> marked = marked_twice(session());
  const bool marked_anew = marked != marked_;
  marked_ = std::move(marked);
  if (marked_anew) agreed_ = sheets_agreed(marked_);
  SatTexts texts = sat_texts(session());
  if (texts_ == texts) return marked_anew && !working_ ? show_rows() : void();
  texts_ = texts;
  working_ = true;
  summary_->setText(tr("The figures are being worked out."));
  behind_.start([this, texts = std::move(texts), number = ++asked_] {
    auto figures = teach::bank_figures(texts.banks, texts.attempts);
    QMetaObject::invokeMethod(
        this,
        [this, number, figures = std::move(figures)]() mutable {
          if (number == asked_) take(std::move(figures));
        },
        Qt::QueuedConnection);
  });
}

void FiguresPage::take(std::vector<teach::BankFigures> figures) {
  working_ = false;
  figures_ = std::move(figures);
  show_rows();
  emit worked_out();
}

void FiguresPage::show_rows() {
  std::vector<ListRow> rows;
  if (!figures_.empty()) rows.push_back({first_row, {{tr("To look at first"), {}, true}}, false});
  for (const teach::BankFigures& bank : figures_)
    rows.push_back({QString::fromStdString(bank.bank),
                    {{item_label(bank.bank), bank.all.people == 0
                                                 ? tr("nobody yet")
                                                 : tr("%1 attempts, %2 passed", "a number, a percentage")
                                                       .arg(QString::number(bank.all.people),
                                                            share_words(bank.all.passed, bank.all.people))}},
                    false});
  if (!figures_.empty() || !agreed_.empty())
    rows.push_back({agreed_row,
                    {{tr("Assessors who differ"),
                      agreed_.empty() ? tr("nobody yet") : tr("sheets: %1").arg(agreed_.size())}},
                    false});
  for (KeyButton* each : buttons_) each->setEnabled(!figures_.empty() || !agreed_.empty());
  summary_->setText(summary());
  list_->set_rows(std::move(rows));  // says its choice, which shows the right side
}

QString FiguresPage::summary() const {
  if (!texts_) return {};
  if (texts_->attempts.empty()) return tr("No quiz has been sat at a station yet.");
  QString words =
      tr("Attempts: %1, from %2 to %3.")
          .arg(QString::number(texts_->attempts.size()), short_day(texts_->first, session().zone()),
               short_day(texts_->last, session().zone()));
  if (texts_->blanked > 0)
    words += ' ' + tr("Left out, since the answers have been erased: %1.").arg(texts_->blanked);
  return words;
}

void FiguresPage::show_words(const QString& words) {
  QLabel* label = role_label("body", words);
  label->setAlignment(Qt::AlignTop);
  view_->setWidget(label);
}

void FiguresPage::show_chosen() {
  const std::string chosen = list_->chosen().toStdString();
  if (may_look() && QString::fromStdString(chosen) == agreed_row)
    return view_->setWidget(agreed_view(agreed_));
  if (figures_.empty()) return show_words(working_ ? QString() : tr("No question bank has been issued yet."));
  const auto bank = std::ranges::find(figures_, chosen, &teach::BankFigures::bank);
  view_->setWidget(bank == figures_.end() ? look_first_view(figures_) : bank_view(*bank));
}

void FiguresPage::open(const Place& place) {
  if (!place.target.empty()) list_->choose(QString::fromStdString(place.target));
  list_->setFocus(Qt::OtherFocusReason);
}

/// Pictures keep the colours that they were made with.
void FiguresPage::changeEvent(QEvent* event) {
  Page::changeEvent(event);
  if (event->type() == QEvent::StyleChange && !figures_.empty()) show_chosen();
}

void FiguresPage::ask_for_csv() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the figures as CSV"),
                                                    tr("figures.csv", "a file's name"), tr("CSV (*.csv)"));
  if (!path.isEmpty()) save_csv(path);
}

void FiguresPage::ask_for_pdf() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the figures as a PDF"),
                                                    tr("figures.pdf", "a file's name"), tr("PDF (*.pdf)"));
  if (!path.isEmpty()) save_pdf(path);
}

void FiguresPage::save_csv(const QString& path) {
  if (const auto written = write_figures_csv(figures_, agreed_, path); !written)
    return emit tell_problem(written.error());
  emit tell(tr("Figures saved as %1.").arg(path));
}

void FiguresPage::save_pdf(const QString& path) {
  const auto pages = write_figures_pdf(session(), figures_, agreed_, summary(), path, paper_size());
  if (!pages) return emit tell_problem(pages.error());
  emit tell(tr("Figures saved as %1. Pages: %2.").arg(path, QString::number(*pages)));
}

void FiguresPage::print() {
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const auto printed = print_figures(session(), figures_, agreed_, summary(), printer, paper_size());
  if (!printed) return emit tell_problem(printed.error());
  emit tell(tr("Figures sent to %1.").arg(printer.printerName()));
}

}  // namespace wm::app
