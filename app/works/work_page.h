#pragma once
// What the pages of question banks and of run sheets share: a list of revisions, an editor laid over it, what
// was typed and not issued, and texts as files.
#include "app/lists/list_page.h"
#include "app/works/revisions.h"
#include "app/works/work_drafts.h"
#include "app/works/work_editor.h"

namespace wm::app {

class WorkPage : public ListPage {
  Q_OBJECT
 public:
  void refresh() override;

  /// Opens a text file in the editor; says why not, where it can't be read.
  void open_file(const QString& path);
  /// Writes what is shown: the chosen revision, or the text in the editor.
  void save_file(const QString& path);

 protected:
  /// `kind`: as WorkDrafts has it.
  WorkPage(Session& session, const QString& kind, WorkEditor* editor, const QString& search_words,
           std::vector<ListColumn> columns, QWidget* parent);

  /// Titles of the dialogs that ask for a file, and the name that a new one is given at first.
  struct FileWords {
    QString open, save, name;
  };
  virtual FileWords file_words() const = 0;
  /// The text that was issued and is chosen; nothing where none is.
  virtual std::optional<WorkFile> chosen_file() const = 0;
  /// What was issued, read anew.
  virtual void read_issued() = 0;
  virtual bool may_look() const = 0;
  /// What it is called, its revision, whether and since when it counts, and how much is in it.
  ListRow revision_row(const Revision& revision, const QString& label, std::size_t parts) const;
  bool may_issue() const { return session().role() == db::Role::manager && !session().known(); }

  /// `of`: as WorkDrafts has it; what was left of it before is shown instead.
  void show_editor(const WorkFile& file, bool may_issue, const QString& of);
  /// Back to the list; what was typed stays for the next time.
  void back();
  void ask_for_file();
  void ask_where();

 private:
  void keep_draft(bool another);
  void close_editor();

  WorkEditor* editor_;
  WorkDrafts drafts_;
  QString edited_;  // what the editor has open, as WorkDrafts has it; empty: only to be read
};

}  // namespace wm::app
