#include "app/works/work_editor.h"

#include <QFontDatabase>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QTextBlock>
#include <QVBoxLayout>

#include "app/lists/effects.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"

namespace wm::app {
namespace {

// Long enough that nobody who types waits for it, short enough that it is there when they look up.
constexpr int look_ms = 150;

QString called(const char* kind, const char* what) {
  return QLatin1String(kind) + QLatin1Char('_') + QLatin1String(what);
}

}  // namespace

WorkEditor::WorkEditor(Session& session, const Words& words, QWidget* preview, QWidget* parent)
    : QWidget(parent),
      session_(session),
      text_(new QPlainTextEdit),
      problems_(new ListView({{tr("Line"), 56}, {tr("What is wrong"), 0}})),
      state_(role_label("large")),
      effects_(role_label("body")),
      issuing_(new QWidget),
      changed_(new QLineEdit),
      from_(new DateField(tr("now"))),
      issue_(new KeyButton(tr("Issue it"), QKeySequence("Ctrl+Return"), true)),
      save_(new KeyButton(tr("Save as a file"), QKeySequence::Save)),
      start_over_(new KeyButton(tr("Start over"), QKeySequence("Ctrl+Shift+R"))),
      leave_(new KeyButton(words.back, QKeySequence("Esc"))) {
  text_->setObjectName(called(words.kind, "text"));
  text_->setAccessibleName(words.text);
  text_->setTabChangesFocus(true);
  text_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  problems_->setObjectName("problems");
  problems_->setAccessibleName(tr("What is wrong"));
  state_->setObjectName(called(words.kind, "state"));
  effects_->setObjectName(called(words.kind, "effects"));
  auto* left = new QVBoxLayout;
  left->setSpacing(10);
  left->addWidget(text_, 1);
  left->addWidget(foot(words));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(22, 18, 20, 14);
  layout->setSpacing(20);
  layout->addLayout(left, 3);
  layout->addWidget(right_side(preview, words), 2);
  soon_.setSingleShot(true);
  soon_.setInterval(look_ms);
  connect(&soon_, &QTimer::timeout, this, [this] {
    emit typed(text_->toPlainText() != opened_);
    look_again();
  });
  connect(text_, &QPlainTextEdit::textChanged, &soon_, qOverload<>(&QTimer::start));
  connect(text_, &QPlainTextEdit::cursorPositionChanged, this, [this] { show_seen(false); });
  connect(problems_, &ListView::opened, this, &WorkEditor::go_to_problem);
  connect(from_, &DateField::day_changed, this, &WorkEditor::show_effects);
  connect(issue_, &QPushButton::clicked, this, &WorkEditor::issue);
  connect(save_, &QPushButton::clicked, this, &WorkEditor::save_wanted);
  connect(start_over_, &QPushButton::clicked, this, &WorkEditor::start_over);
  connect(leave_, &QPushButton::clicked, this, &WorkEditor::left);
}

QWidget* WorkEditor::right_side(QWidget* preview, const Words& words) {
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
  scroll->setWidget(preview);
  scroll->setAccessibleName(words.seen);
  layout->addWidget(scroll, 1);
  return side;
}

QWidget* WorkEditor::foot(const Words& words) {
  changed_->setObjectName(called(words.kind, "changed"));
  changed_->setPlaceholderText(tr("what is new in it, in a sentence"));
  changed_->setAccessibleName(tr("What is new in it"));
  from_->setObjectName(called(words.kind, "from"));
  from_->setAccessibleName(tr("Counts from"));
  issue_->setObjectName("issue");
  save_->setObjectName("save_file");
  start_over_->setObjectName("start_over");
  leave_->setObjectName(called("leave", words.kind));
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

void WorkEditor::open(const WorkFile& file, bool may_issue, const std::optional<WorkFile>& instead) {
  pictures_ = instead ? instead->pictures : file.pictures;
  changed_->clear();
  from_->set_day({});
  from_->set_today(session_.zone().day(session_.now()));
  text_->setReadOnly(!may_issue);
  issuing_->setVisible(may_issue);
  start_over_->setVisible(may_issue);
  opened_ = QString::fromStdString(file.text);
  text_->setPlainText(instead ? QString::fromStdString(instead->text) : opened_);
  look_again();
}

void WorkEditor::start_over() {
  text_->selectAll();
  text_->insertPlainText(opened_);
  text_->moveCursor(QTextCursor::Start);
  look_again();
  take_cursor();
}

WorkFile WorkEditor::file() const { return {text_->toPlainText().toStdString(), pictures_}; }

void WorkEditor::take_cursor() { text_->setFocus(Qt::OtherFocusReason); }

void WorkEditor::look_again() {
  if (soon_.isActive() && !text_->isReadOnly()) emit typed(text_->toPlainText() != opened_);
  soon_.stop();
  found_ = look(file());
  show_problems();
  show_effects();
  show_seen(true);
}

void WorkEditor::show_seen(bool anew) { show_preview(text_->textCursor().blockNumber() + 1, anew); }

void WorkEditor::show_problems() {
  std::vector<ListRow> rows;
  if (!text_->isReadOnly())
    for (const WorkProblem& each : found_)
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

std::optional<Instant> WorkEditor::counts_from() const {
  const auto at = from_->typed() ? std::optional(session_.zone().start(*from_->typed())) : std::nullopt;
  return at && *at > session_.now() ? at : std::nullopt;
}

void WorkEditor::show_effects() {
  if (text_->isReadOnly()) return effects_->clear();
  std::optional<Instant> from;
  if (found_.empty() && from_->is_good()) from = counts_from().value_or(session_.now());
  effects_->setText(effects(from).join('\n'));
}

void WorkEditor::go_to_problem(const QString& id) {
  const auto at = static_cast<std::size_t>(id.toUInt());
  if (at >= found_.size()) return;
  const QTextBlock block = text_->document()->findBlockByNumber(found_[at].line - 1);
  if (block.isValid()) text_->setTextCursor(QTextCursor(block));
  text_->centerCursor();
  take_cursor();
}

void WorkEditor::issue() {
  look_again();
  if (!found_.empty()) return;
  if (!from_->is_good())
    return emit refused({tr("day").toStdString(), tr("That is no day").toStdString(),
                         tr("Type it as 2026-12-01, or leave it empty for now").toStdString()});
  const std::string news = changed_->text().simplified().toStdString();
  Ready next = ready(file(), news);
  const Publish publish{next.item, next.work.revision};
  std::vector<Session::Dated> entries{{db::EnterShopFact{std::move(next.work)}, std::nullopt, {}}};
  if (!next.published) entries.push_back({db::EnterFact{publish}, counts_from(), news});
  const auto done = session_.commit_dated(std::move(entries));
  if (!done) return emit refused(done.error());
  emit issued((tr("Issued.") + ' ' + changed_sentence(done->shifts, session_.store())).trimmed());
}

}  // namespace wm::app
