#pragma once
// A run sheet's text, with what stands in its way, what it changes, and the blank sheet as it is printed.
#include "app/sheets/issued_sheets.h"
#include "app/sheets/sheet_pages.h"
#include "app/works/work_editor.h"

namespace wm::app {

class SheetEditor : public WorkEditor {
  Q_OBJECT
 public:
  explicit SheetEditor(Session& session, QWidget* parent = nullptr);

 protected:
  std::vector<WorkProblem> look(const WorkFile& file) override;
  QStringList effects(std::optional<Instant> from) override;
  void show_preview(int line, bool anew) override;
  Ready ready(const WorkFile& file, const std::string& news) const override;

 private:
  SheetEditor(Session& session, SheetPages* pages, QWidget* parent);
  /// Whether its check-out was published in that revision before it had a text.
  bool published(const Sheet& sheet) const;

  SheetPages* pages_;
  std::vector<SheetRevision> issued_;
  std::optional<Sheet> sheet_;  // where the reader found no mistake
};

}  // namespace wm::app
