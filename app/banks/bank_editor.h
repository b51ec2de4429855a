#pragma once
// A bank's text, with what stands in its way, what it changes, and each question as the member sees it.
#include "app/banks/bank_problems.h"
#include "app/banks/question_preview.h"
#include "app/works/work_editor.h"

namespace wm::app {

class BankEditor : public WorkEditor {
  Q_OBJECT
 public:
  explicit BankEditor(Session& session, QWidget* parent = nullptr);

 protected:
  std::vector<WorkProblem> look(const WorkFile& file) override;
  QStringList effects(std::optional<Instant> from) override;
  void show_preview(int line, bool anew) override;
  Ready ready(const WorkFile& file, const std::string& news) const override;

 private:
  BankEditor(Session& session, QuestionPreview* preview, QWidget* parent);

  QuestionPreview* preview_;
  std::vector<BankRevision> issued_;
  BankLook look_;
  WorkFile looked_at_;
  std::string previewed_;
};

}  // namespace wm::app
