#include "app/works/work_page.h"

#include <QFileDialog>
#include <QStackedWidget>

#include "app/words/words.h"

namespace wm::app {

WorkPage::WorkPage(Session& session, const QString& kind, WorkEditor* editor, const QString& search_words,
                   std::vector<ListColumn> columns, QWidget* parent)
    : ListPage(session, search_words, std::move(columns), parent),
      editor_(editor),
      drafts_(session.station(), kind) {
  views_->addWidget(editor_);
  connect(editor_, &WorkEditor::left, this, &WorkPage::back);
  connect(editor_, &WorkEditor::save_wanted, this, &WorkPage::ask_where);
  connect(editor_, &WorkEditor::typed, this, &WorkPage::keep_draft);
  connect(editor_, &WorkEditor::refused, this, &WorkPage::tell_problem);
  connect(editor_, &WorkEditor::issued, this, [this](const QString& sentence) {
    drafts_.drop(edited_);
    close_editor();
    emit tell(sentence);
  });
}

void WorkPage::refresh() {
  read_issued();
  if (views_->currentWidget() == editor_) {
    editor_->look_again();  // keeps what was typed last
    // What a manager edits is not left to whoever sits down after them.
    if (!may_look() || (!edited_.isEmpty() && !may_issue())) close_editor();
  }
  ListPage::refresh();
}

ListRow WorkPage::revision_row(const Revision& revision, const QString& label, std::size_t parts) const {
  const std::optional<Instant>& from = revision.from;
  const QString counts = revision.in_force             ? tr("in force")
                         : !from                       ? tr("not published")
                         : *from > session().present() ? tr("to come")
                                                       : tr("an earlier one");
  return {revision_id(revision),
          {{label, {}, revision.in_force},
           {QString::number(revision.text.revision), {}},
           {counts, from ? tr("from %1").arg(short_day(*from, session().zone())) : QString()},
           {QString::number(parts), {}}},
          false};
}

void WorkPage::show_editor(const WorkFile& file, bool may_issue, const QString& of) {
  const auto left = may_issue ? drafts_.find(of) : std::nullopt;
  edited_ = may_issue ? of : QString();
  views_->setCurrentWidget(editor_);
  editor_->open(file, may_issue, left);
  editor_->take_cursor();
  if (left) emit tell(tr("This is the text as it was left before, and not issued."));
}

void WorkPage::keep_draft(bool another) {
  if (edited_.isEmpty()) return;
  if (!another) return drafts_.drop(edited_);
  if (const auto problem = drafts_.keep(edited_, editor_->file())) emit tell_problem(*problem);
}

/// Nothing of it is left for whoever comes next.
void WorkPage::close_editor() {
  edited_.clear();
  editor_->open({}, false);
  back();
}

void WorkPage::back() {
  if (views_->currentWidget() == editor_) editor_->look_again();  // keeps what was typed last
  views_->setCurrentIndex(0);
  put_cursor_back();
}

void WorkPage::ask_for_file() {
  const QString path =
      QFileDialog::getOpenFileName(this, file_words().open, {}, tr("Text (*.txt);;All files (*)"));
  if (!path.isEmpty()) open_file(path);
}

void WorkPage::open_file(const QString& path) {
  const auto file = open_work_file(path);
  if (!file) return emit tell_problem(file.error());
  show_editor(*file, may_issue(), path);
}

void WorkPage::ask_where() {
  const FileWords words = file_words();
  const QString path = QFileDialog::getSaveFileName(this, words.save, words.name, tr("Text (*.txt)"));
  if (!path.isEmpty()) save_file(path);
}

void WorkPage::save_file(const QString& path) {
  const auto file = views_->currentWidget() == editor_ ? std::optional(editor_->file()) : chosen_file();
  if (!file) return;
  if (const auto saved = save_work_file(*file, path); !saved) return emit tell_problem(saved.error());
  emit tell(tr("Saved as %1.").arg(path));
}

}  // namespace wm::app
