#include "app/banks/bank_editor.h"

#include <QFontDatabase>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QTextBlock>
#include <QVBoxLayout>

#include "app/banks/bank_change_words.h"
#include "app/lists/effects.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"

namespace wm::app {
namespace {

// Long enough that nobody who types waits for it, short enough that it is there when they look up.
constexpr int look_ms = 150;

}  // namespace

BankEditor::BankEditor(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      text_(new QPlainTextEdit),
      problems_(new ListView({{tr("Line"), 56}, {tr("What is wrong"), 0}})),
      state_(role_label("large")),
      effects_(role_label("body")),
      preview_(new QuestionPreview),
      issuing_(new QWidget),
      changed_(new QLineEdit),
      from_(new DateField(tr("now"))),
      issue_(new KeyButton(tr("Issue it"), QKeySequence("Ctrl+Return"), true)),
      save_(new KeyButton(tr("Save as a file"), QKeySequence::Save)),
      start_over_(new KeyButton(tr("Start over"), QKeySequence("Ctrl+Shift+R"))),
      leave_(new KeyButton(tr("Back to the banks"), QKeySequence("Esc"))) {
  text_->setObjectName("bank_text");
  text_->setAccessibleName(tr("The bank's text"));
  text_->setTabChangesFocus(true);
  text_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  problems_->setObjectName("problems");
  problems_->setAccessibleName(tr("What is wrong"));
  state_->setObjectName("bank_state");
  effects_->setObjectName("bank_effects");
  auto* left = new QVBoxLayout;
  left->setSpacing(10);
  left->addWidget(text_, 1);
  left->addWidget(foot());
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(22, 18, 20, 14);
  layout->setSpacing(20);
  layout->addLayout(left, 3);
  layout->addWidget(right_side(), 2);
  soon_.setSingleShot(true);
  soon_.setInterval(look_ms);
  connect(&soon_, &QTimer::timeout, this, [this] {
    emit typed(text_->toPlainText() != opened_);
    look_again();
  });
  connect(text_, &QPlainTextEdit::textChanged, &soon_, qOverload<>(&QTimer::start));
  connect(text_, &QPlainTextEdit::cursorPositionChanged, this, &BankEditor::show_question);
  connect(problems_, &ListView::opened, this, &BankEditor::go_to_problem);
  connect(from_, &DateField::day_changed, this, &BankEditor::show_effects);
  connect(issue_, &QPushButton::clicked, this, &BankEditor::issue);
  connect(save_, &QPushButton::clicked, this, &BankEditor::save_wanted);
  connect(start_over_, &QPushButton::clicked, this, &BankEditor::start_over);
  connect(leave_, &QPushButton::clicked, this, &BankEditor::left);
}

QWidget* BankEditor::right_side() {
  auto* side = new QWidget;
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(10);
  layout->addWidget(state_);
  layout->addWidget(effects_);
  problems_->setMaximumHeight(180);
  layout->addWidget(problems_);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setWidget(preview_);
  scroll->setAccessibleName(tr("The question as a member sees it"));
  layout->addWidget(scroll, 1);
  return side;
}

QWidget* BankEditor::foot() {
  changed_->setObjectName("bank_changed");
  changed_->setPlaceholderText(tr("what is new in it, in a sentence"));
  changed_->setAccessibleName(tr("What is new in it"));
  from_->setObjectName("bank_from");
  from_->setAccessibleName(tr("Counts from"));
  issue_->setObjectName("issue");
  save_->setObjectName("save_file");
  start_over_->setObjectName("start_over");
  leave_->setObjectName("leave_bank");
  auto* fields = new QHBoxLayout(issuing_);
  fields->setContentsMargins(0, 0, 0, 0);
  fields->setSpacing(12);
  fields->addWidget(changed_, 1);
  auto* counts = role_label("quiet", tr("Counts from"));
  counts->setWordWrap(false);
  fields->addWidget(counts);
  from_->setFixedWidth(130);
  fields->addWidget(from_);
  fields->addWidget(issue_);
  auto* box = new QWidget;
  auto* rows = new QVBoxLayout(box);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->addWidget(issuing_);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(save_);
  buttons->addWidget(start_over_);
  buttons->addWidget(leave_);
  buttons->addStretch(1);
  rows->addLayout(buttons);
  return box;
}

void BankEditor::open(const BankFile& file, bool may_issue, const std::optional<BankFile>& instead) {
  pictures_ = instead ? instead->pictures : file.pictures;
  changed_->clear();
  from_->set_day({});
  from_->set_today(session_.zone().day(session_.now()));
  text_->setReadOnly(!may_issue);
  issuing_->setVisible(may_issue);
  start_over_->setVisible(may_issue);
  previewed_.clear();
  opened_ = QString::fromStdString(file.text);
  text_->setPlainText(instead ? QString::fromStdString(instead->text) : opened_);
  look_again();
}

void BankEditor::start_over() {
  text_->selectAll();
  text_->insertPlainText(opened_);
  text_->moveCursor(QTextCursor::Start);
  look_again();
  take_cursor();
}

BankFile BankEditor::file() const { return {text_->toPlainText().toStdString(), pictures_}; }

void BankEditor::take_cursor() { text_->setFocus(Qt::OtherFocusReason); }

void BankEditor::look_again() {
  if (soon_.isActive() && !text_->isReadOnly()) emit typed(text_->toPlainText() != opened_);
  soon_.stop();
  issued_ = issued_banks(session_);
  look_ = look_at_bank(file(), issued_);
  show_problems();
  show_effects();
  previewed_.clear();
  show_question();
}

void BankEditor::show_problems() {
  std::vector<ListRow> rows;
  if (!text_->isReadOnly())
    for (const BankProblem& each : look_.problems)
      rows.push_back({QString::number(rows.size()),
                      {{QString::number(each.line), {}}, {each.what, each.remedy}},
                      false});
  problems_->setVisible(!rows.empty());
  state_->setText(text_->isReadOnly() ? tr("As it was issued")
                  : rows.empty()      ? tr("Nothing is wrong with it")
                                      : tr("What is wrong: %1", "a number").arg(rows.size()));
  issue_->setEnabled(rows.empty());
  problems_->set_rows(std::move(rows));
}

std::optional<Instant> BankEditor::counts_from() const {
  const auto at = from_->typed() ? std::optional(session_.zone().start(*from_->typed())) : std::nullopt;
  return at && *at > session_.now() ? at : std::nullopt;
}

void BankEditor::show_effects() {
  if (text_->isReadOnly() || !look_.bank) return effects_->clear();
  const BankRevision* before = current_bank(issued_, look_.bank->name);
  QStringList said = before ? bank_change_sentences(teach::changes(before->bank, *look_.bank))
                            : QStringList(tr("A bank of this name has not been issued before."));
  if (look_.problems.empty() && from_->is_good())
    said += sit_again_sentences(session_, look_.bank->name, look_.bank->revision,
                                counts_from().value_or(session_.now()));
  effects_->setText(said.join('\n'));
}

/// The question in which the cursor stands; of a text with mistakes the last one that could be read stays.
void BankEditor::show_question() {
  const std::string id =
      question_at_line(text_->toPlainText().toStdString(), text_->textCursor().blockNumber() + 1);
  if (!look_.bank || (id == previewed_ && !id.empty())) return;
  const teach::Question* question = teach::question_of(*look_.bank, id);
  previewed_ = id;
  if (question)
    preview_->show_question(*question, pictures_);
  else
    preview_->show_words(tr("Put the cursor into a question, and it is shown here as a member sees it."));
}

void BankEditor::go_to_problem(const QString& id) {
  const auto at = static_cast<std::size_t>(id.toUInt());
  if (at >= look_.problems.size()) return;
  const QTextBlock block = text_->document()->findBlockByNumber(look_.problems[at].line - 1);
  if (block.isValid()) text_->setTextCursor(QTextCursor(block));
  text_->centerCursor();
  take_cursor();
}

void BankEditor::issue() {
  look_again();
  if (!look_.problems.empty() || !look_.bank) return;
  if (!from_->is_good())
    return emit refused({tr("day").toStdString(), tr("That is no day").toStdString(),
                         tr("Type it as 2026-12-01, or leave it empty for now").toStdString()});
  const std::string news = changed_->text().simplified().toStdString();
  const teach::Bank bank = *look_.bank;
  const auto from = counts_from();
  const auto kept = session_.commit(
      db::EnterShopFact{db::Issued{db::Work::bank, bank.name, bank.revision, news, file().text, pictures_}});
  if (!kept) return emit refused(kept.error());
  const auto published = session_.commit(db::EnterFact{Publish{bank.name, bank.revision}}, from, news);
  if (!published) return emit refused(published.error());
  emit issued((tr("Issued.") + ' ' + changed_sentence(published->shifts, session_.store())).trimmed());
}

}  // namespace wm::app
