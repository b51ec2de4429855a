#include "app/sheets/sheet_editor.h"

#include "app/sheets/sheet_change_words.h"
#include "core/sheet/sheet_text.h"

namespace wm::app {

SheetEditor::SheetEditor(Session& session, QWidget* parent) : SheetEditor(session, new SheetPages, parent) {}

SheetEditor::SheetEditor(Session& session, SheetPages* pages, QWidget* parent)
    : WorkEditor(session,
                 {"sheet", tr("The run sheet's text"), tr("The blank sheet as it is printed"),
                  tr("Back to the run sheets")},
                 pages, parent),
      pages_(pages) {}

std::vector<WorkProblem> SheetEditor::look(const WorkFile& file) {
  issued_ = issued_sheets(session());
  std::vector<WorkProblem> problems;
  auto sheet = read_sheet(file.text);
  sheet_ = sheet ? std::optional(std::move(*sheet)) : std::nullopt;
  if (!sheet_)
    for (const Problem& each : sheet.error()) problems.push_back(work_problem(each));
  if (!sheet_) return problems;
  if (auto problem = issued_already(file.text, sheet_->revision, highest_issued(issued_, sheet_->name)))
    problems.push_back(*std::move(problem));
  else if (const int last = highest_published(session(), sheet_->checkout); sheet_->revision < last)
    problems.push_back({line_of_revision(file.text),
                        tr("Revision %1 of this check-out counts already").arg(last),
                        tr("Write that one or a higher one")});
  return problems;
}

bool SheetEditor::published(const Sheet& sheet) const {
  return published_in(session()).contains({sheet.checkout, sheet.revision});
}

QStringList SheetEditor::effects(std::optional<Instant> from) {
  if (!sheet_) return {};
  const SheetRevision* before = current_of(issued_, sheet_->name);
  QStringList said = before ? sheet_change_sentences(before->sheet, *sheet_)
                            : QStringList(tr("A run sheet of this name has not been issued before."));
  said += unused_sentences(session(), *sheet_);
  if (from && published(*sheet_))
    said << tr(
        "This revision of the check-out has been published: its sheet can be marked as soon as it counts.");
  else if (from)
    said += check_out_again_sentences(session(), *sheet_, *from);
  return said;
}

/// Of a text with mistakes the last one that could be read stays.
void SheetEditor::show_preview(int, bool anew) {
  if (anew && sheet_) pages_->show_sheet(session(), *sheet_);
}

WorkEditor::Ready SheetEditor::ready(const WorkFile& file, const std::string& news) const {
  return {{db::Work::sheet, sheet_->name, sheet_->revision, news, file.text, {}},
          sheet_->checkout,
          published(*sheet_)};
}

}  // namespace wm::app
