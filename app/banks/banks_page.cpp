#include "app/banks/banks_page.h"

#include "app/widgets/person_search.h"
#include "app/words/words.h"

namespace wm::app {

BanksPage::BanksPage(Session& session, QWidget* parent)
    : WorkPage(session, "bank", new BankEditor(session), tr("a quiz"),
               {{tr("Name"), 0}, {tr("Revision"), 90}, {tr("Counts"), 190}, {tr("Questions"), 100}}, parent) {
  connect(list_, &ListView::opened, this, [this] { may_issue() ? edit() : look_through(); });
}

bool BanksPage::may_look() const {
  return session().role() == db::Role::instructor || session().role() == db::Role::manager;
}

void BanksPage::read_issued() { banks_ = may_look() ? issued_banks(session()) : std::vector<BankRevision>(); }

void BanksPage::open(const Place& place) {
  back();
  if (const BankRevision* bank = current_of(banks_, place.target)) list_->choose(revision_id(*bank));
  search_->selectAll();
}

std::vector<ListRow> BanksPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  std::vector<ListRow> rows;
  for (const BankRevision& bank : banks_) {
    const QString label = item_label(bank.text.name);
    if (wanted.in(label)) rows.push_back(revision_row(bank, label, bank.bank.questions.size()));
  }
  count_->setText(may_look() ? tr("Revisions: %1").arg(rows.size()) : QString());
  return rows;
}

const BankRevision* BanksPage::chosen_bank() const {
  const auto found = std::ranges::find(banks_, list_->chosen(), revision_id);
  return found == banks_.end() ? nullptr : &*found;
}

void BanksPage::describe(const QString&) {
  panel_->start();
  const BankRevision* bank = chosen_bank();
  if (!may_look()) {
    panel_->heading(tr("Question banks"));
    return panel_->paragraph(
        tr("Question banks show which answers are right. They open for instructors and managers."));
  }
  if (bank)
    describe_bank(*bank);
  else
    panel_->heading(banks_.empty() ? tr("No question bank has been issued yet") : tr("None of that name"));
  if (may_issue()) {
    panel_->section(tr("From a file"));
    panel_->button(tr("Open a bank's text"), QKeySequence::Open, [this] { ask_for_file(); })
        ->setObjectName("open_file");
  }
}

void BanksPage::describe_bank(const BankRevision& issued) {
  const teach::Bank& bank = issued.bank;
  panel_->heading(item_label(bank.name));
  panel_->quiet(tr("Revision %1, issued on %2.")
                    .arg(QString::number(bank.revision), short_day(issued.issued, session().zone())));
  if (!issued.text.changed.empty()) panel_->paragraph(QString::fromStdString(issued.text.changed));
  panel_->line(tr("On a paper"), tr("%1 questions").arg(teach::questions_a_paper(bank)));
  panel_->line(tr("Passes with"), tr("%1 % right, and no critical question wrong").arg(bank.pass_percent));
  panel_->line(tr("Time"), bank.minutes ? tr("%1 minutes").arg(*bank.minutes) : tr("as long as it takes"));
  QStringList languages;
  for (const std::string& tag : bank.languages) languages << QString::fromStdString(tag);
  panel_->line(tr("Languages"), languages.join(tr(", ")));
  panel_->section(tr("What can be done"));
  if (may_issue())
    panel_->button(tr("Edit it into the next revision"), QKeySequence("Ctrl+Return"), [this] { edit(); })
        ->setObjectName("edit");
  panel_->button(tr("Look through it"), QKeySequence("Ctrl+L"), [this] { look_through(); })
      ->setObjectName("look");
  panel_->button(tr("Save as a file"), QKeySequence::Save, [this] { ask_where(); })->setObjectName("save");
  panel_->section(tr("What is on a paper"));
  for (const teach::Draw& draw : bank.draws)
    panel_->line(QString::fromStdString(draw.topic),
                 tr("%1 of %2, critical ones always", "questions of a topic: on a paper, in the bank")
                     .arg(draw.count)
                     .arg(std::ranges::count(bank.questions, draw.topic, &teach::Question::topic)));
}

void BanksPage::look_through() {
  if (const BankRevision* bank = chosen_bank())
    show_editor({bank->text.text, bank->text.enclosures}, false, {});
}

/// The text as it stands, under the next number.
void BanksPage::edit() {
  const BankRevision* bank = chosen_bank();
  if (!bank) return;
  const int next = highest_issued(banks_, bank->text.name) + 1;
  show_editor({with_revision(bank->text.text, next, question_key), bank->text.enclosures}, true,
              QString::fromStdString(bank->text.name));
}

WorkPage::FileWords BanksPage::file_words() const {
  return {tr("Open a bank's text"), tr("Save the bank as a file"), tr("bank.txt", "a file's name")};
}

std::optional<WorkFile> BanksPage::chosen_file() const {
  const BankRevision* bank = chosen_bank();
  return bank ? std::optional(WorkFile{bank->text.text, bank->text.enclosures}) : std::nullopt;
}

}  // namespace wm::app
