#include "app/banks/bank_editor.h"

#include "app/banks/bank_change_words.h"

namespace wm::app {

BankEditor::BankEditor(Session& session, QWidget* parent)
    : BankEditor(session, new QuestionPreview, parent) {}

BankEditor::BankEditor(Session& session, QuestionPreview* preview, QWidget* parent)
    : WorkEditor(
          session,
          {"bank", tr("The bank's text"), tr("The question as a member sees it"), tr("Back to the banks")},
          preview, parent),
      preview_(preview) {}

std::vector<WorkProblem> BankEditor::look(const WorkFile& file) {
  issued_ = issued_banks(session());
  look_ = look_at_bank(file, issued_);
  looked_at_ = file;
  return look_.problems;
}

QStringList BankEditor::effects(std::optional<Instant> from) {
  if (!look_.bank) return {};
  const BankRevision* before = current_of(issued_, look_.bank->name);
  QStringList said = before ? bank_change_sentences(teach::changes(before->bank, *look_.bank))
                            : QStringList(tr("A bank of this name has not been issued before."));
  if (from) said += sit_again_sentences(session(), look_.bank->name, look_.bank->revision, *from);
  return said;
}

/// The question in which the cursor stands; of a text with mistakes the last one that could be read stays.
void BankEditor::show_preview(int line, bool anew) {
  const std::string id = question_at_line(looked_at_.text, line);
  if (!look_.bank || (!anew && id == previewed_ && !id.empty())) return;
  const teach::Question* question = teach::question_of(*look_.bank, id);
  previewed_ = id;
  if (question)
    preview_->show_question(*question, looked_at_.pictures);
  else
    preview_->show_words(tr("Put the cursor into a question, and it is shown here as a member sees it."));
}

WorkEditor::Ready BankEditor::ready(const WorkFile& file, const std::string& news) const {
  const teach::Bank& bank = *look_.bank;
  return {{db::Work::bank, bank.name, bank.revision, news, file.text, file.pictures}, bank.name, false};
}

}  // namespace wm::app
